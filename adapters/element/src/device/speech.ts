/**
 * Voice entry where the browser has it.
 */

interface Recognition {
  lang: string;
  onresult: ((event: { results: ArrayLike<ArrayLike<{ transcript: string }>> }) => void) | null;
  onend: (() => void) | null;
  start: () => void;
}

type RecognitionMaker = new () => Recognition;

/**
 * Listens once: `heard` is called with what was said, `ended` in any case. False where the browser
 * cannot.
 */
export function listenOnce(
  locale: string,
  on: { readonly heard: (text: string) => void; readonly ended: () => void },
): boolean {
  const Maker = recognitionMaker();
  if (Maker === undefined) return false;
  const recognition = new Maker();
  recognition.lang = locale;
  recognition.onresult = ({ results }) => {
    on.heard(results[0]?.[0]?.transcript ?? '');
  };
  recognition.onend = on.ended;
  recognition.start();
  return true;
}

/** Whether the browser can listen. */
export function canListen(): boolean {
  return recognitionMaker() !== undefined;
}

function recognitionMaker(): RecognitionMaker | undefined {
  const held = globalThis as unknown as Readonly<Record<string, RecognitionMaker | undefined>>;
  return held['SpeechRecognition'] ?? held['webkitSpeechRecognition'];
}
