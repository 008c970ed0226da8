import type { DriverLine } from './flow-texts.ts';

/** What a driver is told: whom help is sent to need call nobody. Pure. */
export function driverLines(
  lines: readonly DriverLine[],
  { isSentHelp }: { readonly isSentHelp: boolean },
): readonly string[] {
  return lines.flatMap((line) =>
    typeof line === 'string' ? [line] : isSentHelp ? [] : [line.call],
  );
}
