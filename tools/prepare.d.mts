/** The folder of this checkout, absolute. */
export const root: string;

/** Makes a checkout ready to run: installs and builds what has changed. */
export function prepare(): Promise<void>;
