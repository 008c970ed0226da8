import { limitsReport, referenceVehicle, type LimitReport } from './limits-report.ts';

function figure(value: number): string {
  return String(Number(value.toFixed(3)));
}

function boundAndSource({ result }: LimitReport): readonly [string, string] {
  if (result.type === 'unknown') {
    return [`needs ${result.missing.join(', ')}`, ''];
  }
  const { low, high, unit, source } = result.bound;
  const ends = low === high ? figure(low) : `${figure(low)} to ${figure(high)}`;
  return [`${ends} ${unit}`, `${source.provenance}: ${source.text}`];
}

/**
 * The limits report as Markdown: the reference vehicle in one sentence, then a table of the limits.
 */
export function limitsTable(): string {
  const vehicle = Object.entries(referenceVehicle).map(
    ([field, value]) => `\`${field}\` ${String(value)}`,
  );
  const rows = limitsReport().map((report) => {
    const [bound, source] = boundAndSource(report);
    const fields = report.dependsOn.map((field) => `\`${field}\``).join(', ');
    return [`\`${report.name}\``, report.parts, bound, fields || 'nothing', source];
  });
  const table = [
    ['limit', 'what it parts', 'reference vehicle', 'depends on', 'source'],
    ['---', '---', '---', '---', '---'],
    ...rows,
  ].map((cells) => `| ${cells.join(' | ')} |`);
  return [`The reference vehicle: ${vehicle.join(', ')}.`, '', ...table].join('\n');
}
