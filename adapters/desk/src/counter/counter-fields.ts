/**
 * What is typed into the fields of the return in hand: figures, judged while they are typed, and days.
 */
import type { Turned } from '../engine/engine.ts';
import { isOther } from './counter-entry.ts';
import type { CounterVoice } from './counter-voice.ts';
import type { CounterEngine } from './engine/counter-engine.ts';
import { figuresGiven, isTakable } from './engine/figures-given.ts';
import type { ReturnWork } from './return-work.ts';
import { figuresInHand } from './view/step-card.ts';

/** What the fields are read with. */
interface CounterFieldsSetup {
  readonly engine: CounterEngine;
  readonly voice: CounterVoice;
  readonly work: ReturnWork;
}

/** The fields of one counter. */
export class CounterFields {
  readonly #engine: CounterEngine;
  readonly #voice: CounterVoice;
  readonly #work: ReturnWork;
  /** What was typed when the figures were judged last, by check. */
  #judged: Readonly<Record<string, string>> = {};
  #isJudging = false;

  constructor({ engine, voice, work }: CounterFieldsSetup) {
    this.#engine = engine;
    this.#voice = voice;
    this.#work = work;
  }

  /** True while a figure is judged that was typed a moment ago. */
  get isJudging(): boolean {
    return this.#isJudging;
  }

  /** Works out what stands on the scales of the figures that are asked for. */
  async weigh(): Promise<void> {
    const { back } = this.#work;
    const checks = this.#checks;
    if (back === undefined || checks.length === 0) return;
    const typed = Object.fromEntries(checks.map((check) => [check, this.#typedAs(check)]));
    const measured = this.#work.hand.byHand
      ? await this.#engine.measured(this.#work.evidence.told(back))
      : undefined;
    const figures =
      measured?.figures ??
      (await this.#engine.figures(back.sitting, { at: now(), locale: this.#voice.tag, typed }));
    const isStill = checks.every((check) => this.#typedAs(check) === typed[check]);
    if (this.#work.back?.id !== back.id || !isStill) return;
    this.#judged = typed;
    this.#work.lay((lying) => ({ ...lying, figures, ...(measured && { measured }) }));
  }

  /** A figure as it is being typed. */
  typed(check: string, text: string): void {
    this.#work.alter({ typed: { ...this.#work.back?.typed, [check]: text } });
    this.#work.lay((lying) => lying);
    void this.#work.trying(() => this.weigh());
  }

  /** Takes the figures that were typed. Gives the check of the first that cannot be taken. */
  async takeFigures(): Promise<string | undefined> {
    if (await this.takesOther()) return undefined;
    await this.#work.trying(() => this.weigh());
    const { inHand, hand } = this.#work;
    if (inHand === undefined) return undefined;
    const { figures, back } = inHand;
    const given = figuresGiven(figuresInHand(hand, inHand), back.typed, figures);
    if (given.type === 'wrong') return given.check;
    if (given.type === 'none') {
      this.#work.notice(this.#voice.words.figureNeeded);
      return undefined;
    }
    if (hand.byHand) {
      await this.#work.evidence.takeByHand();
      return undefined;
    }
    const { answers } = given;
    const [only] = answers;
    if (hand.asking !== null && only !== undefined) {
      await this.#work.answer(only.check, only.value);
    } else await this.#work.take({ type: 'answers', answers });
    return undefined;
  }

  /** Whether a figure as it is typed cannot be taken. What is typed meanwhile waits for the answer. */
  async isWrong(check: string): Promise<boolean> {
    await this.#judge([check]);
    const figure = this.#work.inHand?.figures[check];
    const isEmpty = this.#typedAs(check).trim() === '';
    return !isEmpty && (figure === undefined || !isTakable(figure));
  }

  /**
   * What was typed where a figure is asked for and is none, or is that of another question: the code
   * of a case is offered, and the rest heard. False where there is neither. The field is emptied again.
   */
  async takesOther(): Promise<boolean> {
    await this.#judge(this.#checks);
    const figures = this.#work.inHand?.figures ?? {};
    const check = this.#checks.find(
      (one) => isOther(this.#typedAs(one)) || figures[one]?.isOfOther === true,
    );
    if (check === undefined) return false;
    const text = this.#typedAs(check);
    this.#work.alter({ typed: { ...this.#work.back?.typed, [check]: '' } });
    // What was said of it goes with it.
    await this.#work.trying(() => this.weigh());
    await this.#work.entry.enter(text, 'typed');
    return true;
  }

  /** Waits until what is typed for these checks is judged as it stands. */
  async #judge(checks: readonly string[]): Promise<void> {
    if (checks.every((check) => this.#judged[check] === this.#typedAs(check))) return;
    this.#isJudging = true;
    await this.#work
      .trying(() => this.weigh())
      .finally(() => {
        this.#isJudging = false;
      });
  }

  /** A day as it was typed for a check; one that cannot be read is asked for again. */
  async day(check: string, text: string): Promise<void> {
    const { back } = this.#work;
    if (back === undefined) return;
    if (isOther(text)) {
      await this.#work.entry.enter(text, 'typed');
      return;
    }
    await this.#work.trying(async () => {
      const { sitting } = back;
      const typed = await this.#engine.day(sitting, {
        at: now(),
        check,
        locale: this.#voice.tag,
        text,
      });
      if (this.#work.back?.sitting !== sitting) return;
      const days =
        typed.type === 'day' ? [typed.day] : possibleDays(typed.unclear, this.#work.today);
      const [only] = days;
      if (only !== undefined && days.length === 1) await this.#work.answer(check, [only]);
      else if (typed.type === 'unclear') {
        const { unclear } = typed;
        this.#work.dropErrors();
        this.#work.lay((lying) => ({ ...lying, unclear }), true);
      }
    });
  }

  /** The checks whose figures are asked for now. */
  get #checks(): readonly string[] {
    const { inHand, hand } = this.#work;
    return inHand === undefined ? [] : figuresInHand(hand, inHand);
  }

  #typedAs(check: string): string {
    return this.#work.back?.typed[check] ?? '';
  }
}

/** The days that a date in figures may mean, without those that are still to come. */
function possibleDays(unclear: NonNullable<Turned['unclear']>, today: string): readonly string[] {
  if (unclear.type !== 'offers') return [];
  return unclear.offers
    .map((one) => ('value' in one ? one.value : undefined))
    .filter((value) => typeof value === 'string')
    .filter((day) => day <= today);
}

function now(): string {
  return new Date().toISOString();
}
