/**
 * Which table of a check counts.
 */
import { holds, type Known } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import { tablesFor, type EvidenceTable } from './evidence-tables.ts';
import { likeliest } from './findings.ts';

/** The first table of a check whose condition holds, as whoever answers gives the answers. */
export function tableFor(flow: Flow, known: Known, check: string): EvidenceTable | undefined {
  const tables = tablesFor(flow, known.context('role')).get(check);
  const [first] = tables ?? [];
  if (first?.given === undefined) return first;
  const side = leaning(known);
  return tables?.find(({ given }) => given === undefined || holds(given, side) === true);
}

/** What is known, with every reading near a bound taken for the likelier side. */
function leaning(known: Known): Known {
  return {
    finding: (check) => {
      const finding = known.finding(check);
      if (finding?.value === undefined) return finding;
      const best = likeliest(finding.weights);
      return best === undefined ? finding : { ...finding, weights: { [best[0]]: 1 } };
    },
    findings: (check) => known.findings(check),
    context: (path) => known.context(path),
    raised: (interrupt) => known.raised(interrupt),
    limit: (name) => known.limit(name),
  };
}
