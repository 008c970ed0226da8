/** A server of the built pages. */
export interface PagesServer {
  /** Its address, with a slash at the end. */
  readonly url: string;
  readonly close: () => void;
}

/** Serves the built pages on loopback; `port` 0 takes any that is free. */
export function servePages(port?: number): Promise<PagesServer>;
