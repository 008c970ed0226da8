import type { Check } from './flow.ts';

/** The answers that a check may have: choice ids, band ids in ascending order, or `done`. */
export function optionsOf(check: Check): readonly string[] {
  switch (check.form.kind) {
    case 'choice':
      return check.form.choices;
    case 'reading':
    case 'date':
      return check.form.bands.map(({ id }) => id);
    case 'work':
      return ['done'];
  }
}
