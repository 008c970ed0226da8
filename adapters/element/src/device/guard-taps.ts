/**
 * A tap that began before a question stood there was meant for another: none is taken. A keyboard's
 * press has no length.
 */
export function guardTaps(root: ShadowRoot, cardNow: () => string): () => void {
  let pressedOn = '';
  const down = (): void => {
    pressedOn = cardNow();
  };
  const tap = (event: Event): void => {
    if (!(event instanceof MouseEvent) || event.detail === 0) return;
    const isOfCard = event.target instanceof Element && event.target.closest('.card') !== null;
    if (!isOfCard || pressedOn === cardNow()) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  root.addEventListener('pointerdown', down, { capture: true });
  root.addEventListener('click', tap, { capture: true });
  return () => {
    root.removeEventListener('pointerdown', down, { capture: true });
    root.removeEventListener('click', tap, { capture: true });
  };
}
