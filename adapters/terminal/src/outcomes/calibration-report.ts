/**
 * How far the probabilities of verdicts could be taken at their word, in lines of text.
 */
import {
  forecastRecord,
  verdictTable,
  type Counts,
  type ForecastOutcome,
  type ReliabilityBin,
} from '@keyturn/evidence';

/** Which outcomes are reported on. */
export interface ReportedGroup {
  readonly role?: string;
  readonly channel?: string;
}

/** The outcomes of a group. */
export function outcomesIn(
  outcomes: readonly ForecastOutcome[],
  { role, channel }: ReportedGroup,
): readonly ForecastOutcome[] {
  return outcomes.filter(
    (outcome) =>
      (role === undefined || outcome.role === role) &&
      (channel === undefined || outcome.channel === channel),
  );
}

/** What a group is called. */
export function groupName({ role, channel }: ReportedGroup): string {
  const parts = [
    ...(role === undefined ? [] : [`role ${role}`]),
    ...(channel === undefined ? [] : [`channel ${channel}`]),
  ];
  return parts.length === 0 ? 'all' : parts.join(', ');
}

/** The report, in lines of at most 80 columns. */
export function calibrationReport(
  counts: Counts,
  outcomes: readonly ForecastOutcome[],
  group: ReportedGroup,
): readonly string[] {
  const entered = outcomesIn(outcomes, group);
  const all = Object.keys(counts.outcomes).length;
  const { id, version } = counts.flow;
  const roles = [...new Set(entered.map(({ role }) => role))].sort();
  const channels = [...new Set(entered.map(({ channel }) => channel))].sort();
  const groups = [
    group,
    ...(group.role === undefined ? roles.map((role) => ({ ...group, role })) : []),
    ...(group.channel === undefined ? channels.map((channel) => ({ ...group, channel })) : []),
  ];
  return [
    `Confirmed outcomes of ${id} ${version}: ${String(outcomes.length)} entered here, ` +
      `${String(all - outcomes.length)} imported.`,
    'They are a selection: cases of which someone learned the cause. Few say little.',
    '',
    `What the verdicts said, held against what was confirmed (${groupName(group)})`,
    '',
    ...(entered.length === 0
      ? ['There is nothing entered here to report on.']
      : [
          row(['', 'cases', 'right', 'Brier score', 'log score']),
          ...groups.map((one) => scoreRow(groupName(one), outcomesIn(outcomes, one))),
          '',
          row(['verdict said', 'cases', 'right', 'said (mean)', 'came true']),
          ...verdictTable(entered).map(binRow),
          '',
          'Brier score: sum over the faults of (said - came)², 0 perfect, 2 the worst.',
          'Log score: -ln of what was said of the confirmed fault, 0 perfect. Both are',
          'means; faults behind the eighth of a ranking are scored as one. Counts that',
          'were imported hold no probabilities and are not in these tables.',
        ]),
  ];
}

const columns = [30, 7, 7, 13, 11];

function row(cells: readonly string[]): string {
  return cells
    .map((cell, index) =>
      index === 0 ? cell.padEnd(columns[0] ?? 0) : cell.padStart(columns[index] ?? 0),
    )
    .join('')
    .trimEnd();
}

function scoreRow(name: string, outcomes: readonly ForecastOutcome[]): string {
  const { cases, right, brier, log } = forecastRecord(outcomes);
  return row([name, String(cases), String(right), figure(brier), figure(log)]);
}

function binRow({
  from,
  to,
  count,
  came,
  meanForecast,
  observedFrequency,
}: ReliabilityBin): string {
  return row([
    `${String(Math.round(from * 100))} to ${String(Math.round(to * 100))} %`,
    String(count),
    String(came),
    percent(meanForecast),
    percent(observedFrequency),
  ]);
}

function percent(share: number | null): string {
  return share === null ? '-' : `${String(Math.round(share * 100))} %`;
}

function figure(value: number): string {
  return Number.isFinite(value) ? value.toFixed(3) : 'no limit';
}
