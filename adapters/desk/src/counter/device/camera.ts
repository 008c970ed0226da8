/**
 * Codes read by the camera, where the browser can: the Barcode Detection API (WICG draft), which not
 * every browser has.
 */

/** What the page needs of the API. */
interface Detector {
  readonly detect: (source: HTMLVideoElement) => Promise<readonly { readonly rawValue: string }[]>;
}

type DetectorMaker = new () => Detector;

/** Milliseconds between two looks. */
const everyMs = 200;

/** Whether this browser reads codes and has a camera to read them with. */
export function canReadCodes(): boolean {
  return makerHere() !== undefined && 'mediaDevices' in navigator;
}

function makerHere(): DetectorMaker | undefined {
  return (globalThis as { readonly BarcodeDetector?: DetectorMaker }).BarcodeDetector;
}

/**
 * Shows the camera and looks for a code until one is found. Rejects where the camera is not to be
 * had; gives what ends it.
 */
export async function watchForCode(
  video: HTMLVideoElement,
  found: (text: string) => void,
): Promise<() => void> {
  const Maker = makerHere();
  if (Maker === undefined) throw new Error('BarcodeDetector');
  const detector = new Maker();
  const stream = await navigator.mediaDevices.getUserMedia({
    video: { facingMode: 'environment' },
  });
  video.srcObject = stream;
  await video.play();
  const ending = new AbortController();
  const end = (): void => {
    ending.abort();
    for (const track of stream.getTracks()) track.stop();
    video.srcObject = null;
  };
  const isEnded = (): boolean => ending.signal.aborted;
  const look = async (): Promise<void> => {
    while (!isEnded()) {
      const [code] = await detector.detect(video).catch(() => []);
      if (code !== undefined && !isEnded()) {
        end();
        found(code.rawValue);
        return;
      }
      await new Promise((resolve) => setTimeout(resolve, everyMs));
    }
  };
  void look();
  return end;
}
