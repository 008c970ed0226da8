import { convert, type UnitCode } from '@keyturn/electrics';
import { figureText } from './figure-text.ts';
import { problem, type Kind } from './kind.ts';
import type { SaidFigure } from './question.ts';
import { readUnit, unitSign, type FigureKind } from './said-units.ts';

const kinds: readonly FigureKind[] = [
  ...(['voltage', 'current', 'charge', 'resistance', 'temperature', 'torque', 'time'] as const),
  ...(['frequency', 'volume', 'area', 'length', 'power'] as const),
];

/** What each unit is turned into where the question does not say. */
const counterparts: Readonly<Partial<Record<UnitCode, UnitCode>>> = {
  'N.m': '[lbf_av].[ft_i]',
  '[lbf_av].[ft_i]': 'N.m',
  '[lbf_av].[in_i]': 'N.m',
  'kgf.m': 'N.m',
  Cel: '[degF]',
  '[degF]': 'Cel',
  '[ft_i]': 'm',
  '[in_i]': 'mm',
  '[cin_i]': 'L',
};

function isBeside(figure: SaidFigure, at: number): boolean {
  return at < figure.tokens[0] || at >= figure.tokens[1];
}

/** A figure in another unit. */
export const unitConversion: Kind = {
  group: 'Units',
  examples: ['12 lbf·ft in N·m', '20 °F in °C'],
  read: (question) => {
    const found = kinds.flatMap((kind) => question.figures(kind));
    const [figure] = found;
    if (figure === undefined || found.length > 1) return undefined;
    question.says('convert');
    const { quantity } = figure;
    const at = question.tokens.findIndex(
      ({ text }, index) => /^(?:in|to|into|as)$/.test(text) && isBeside(figure, index),
    );
    const said = at < 0 ? undefined : readUnit(question.tokens, at + 1);
    if (at >= 0 && said === undefined) {
      const next = question.tokens[at + 1];
      return next === undefined ? undefined : problem(`${next.text} is no unit known here`, next);
    }
    const to = said?.unit ?? counterparts[quantity.unit];
    if (to === undefined) return undefined;
    if (said !== undefined && said.kind !== figure.kind) {
      return problem(`${figure.text} cannot be turned into ${unitSign(to)}`, figure);
    }
    question.take(figure);
    const words = question.tokens.slice(at + 1, at + 1 + (said?.length ?? 0));
    question.says(words.map(({ text }) => text).join(' '));
    const value = convert(quantity, to).value / (said?.factor ?? 1);
    return {
      type: 'answer',
      lines: [figureText(value, to)],
      sources: [{ provenance: 'from memory', text: 'NIST SP 811 (2008) Appendix B' }],
    };
  },
};
