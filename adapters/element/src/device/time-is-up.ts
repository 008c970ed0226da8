/**
 * That a wait is over, to be felt and heard, for a phone that lies on the engine.
 */

/** Three short buzzes. */
const buzz = [250, 120, 250, 120, 250];

/** Two tones, in hertz, each this many seconds long. */
const tones = [880, 1320];
const toneSeconds = 0.22;

/** Vibrates and sounds, each where the browser can and lets it. */
export function timeIsUp(): void {
  // Safari on a phone has no vibration, whatever the types say.
  if ('vibrate' in navigator) navigator.vibrate(buzz);
  try {
    const context = new AudioContext();
    tones.forEach((hertz, index) => {
      const oscillator = context.createOscillator();
      const gain = context.createGain();
      const from = context.currentTime + index * toneSeconds;
      oscillator.frequency.value = hertz;
      gain.gain.setValueAtTime(0.25, from);
      gain.gain.exponentialRampToValueAtTime(0.001, from + toneSeconds);
      oscillator.connect(gain).connect(context.destination);
      oscillator.start(from);
      oscillator.stop(from + toneSeconds);
    });
    setTimeout(() => void context.close(), tones.length * toneSeconds * 1000 + 200);
  } catch {
    // Without a sound device there is still what is seen.
  }
}
