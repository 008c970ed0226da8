/** What a case is drawn with, for another page of ours: the pieces and the look of the strip. */
export { timeIsUp } from './device/time-is-up.ts';
export { addTypeface } from './device/typeface.ts';
export { directionOf, fittingTag } from './host.ts';
export { look } from './look/look.ts';
export { mayBeNegative } from './view/answer-keys.ts';
export { picture } from './view/pictures.ts';
export { ranking } from './view/ranking.ts';
export { sign } from './view/sign.ts';
export { finding, sections } from './view/strip-view.ts';
export { waitClock } from './view/wait.ts';
