/**
 * The desk's own words filled in, times and durations as a language writes them.
 */

/** Begin and end of a piece whose direction is its own. */
const [isolate, pop] = ['\u2068', '\u2069'];

/** A text with its placeholders filled. What is filled in keeps its own direction. */
export function fill(text: string, values: Readonly<Record<string, string | number>>): string {
  return text.replaceAll(/\{\{(\w+)\}\}/g, (whole, name: string) =>
    Object.hasOwn(values, name) ? `${isolate}${String(values[name])}${pop}` : whole,
  );
}

/** The time of day: 14:05, or 14:05:32. */
export function timeOfDay(at: string | number, locale: string, hasSeconds = false): string {
  const how = {
    hour: '2-digit',
    minute: '2-digit',
    ...(hasSeconds ? ({ second: '2-digit' } as const) : {}),
    hourCycle: 'h23',
  } as const;
  return new Intl.DateTimeFormat(locale, how).format(new Date(at));
}

/** The day of the week with its date, and the time: Thursday, November 26, 14:05. */
export function dayAndTime(at: string, locale: string): string {
  const how = { weekday: 'short', day: 'numeric', month: 'short' } as const;
  const day = new Intl.DateTimeFormat(locale, how).format(new Date(at));
  return `${day}, ${timeOfDay(at, locale)}`;
}

/** A duration in words: 4 minutes, 1 hour 5 minutes. Whole minutes, at least one. */
export function duration(minutes: number, locale: string): string {
  const whole = Math.max(1, Math.round(minutes));
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  const written = (value: number, unit: string): string =>
    new Intl.NumberFormat(locale, { style: 'unit', unit, unitDisplay: 'long' }).format(value);
  return [
    ...(hours > 0 ? [written(hours, 'hour')] : []),
    ...(rest > 0 || hours === 0 ? [written(rest, 'minute')] : []),
  ].join(' ');
}

/** Words one after another, as a language sets them apart. */
export function listed(words: readonly string[], locale: string): string {
  return new Intl.ListFormat(locale, { type: 'unit', style: 'short' }).format(words);
}
