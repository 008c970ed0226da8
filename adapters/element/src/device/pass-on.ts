/**
 * A text given to another program of the device, to be sent to somebody.
 */

/** True where the device hands texts from one program to another. */
export function canShare(): boolean {
  return 'share' in navigator;
}

/**
 * Hands a text on, or copies it where the device hands nothing on. True where it was copied, false
 * where it could not be; undefined where the device took it, or whoever was asked left it.
 */
export async function passOn(text: string): Promise<boolean | undefined> {
  try {
    if (canShare()) {
      await navigator.share({ text });
      return undefined;
    }
    await navigator.clipboard.writeText(text);
    return true;
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? undefined : false;
  }
}
