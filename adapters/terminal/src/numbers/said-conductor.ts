import type {
  Conductor,
  ConductorMake,
  ConductorMaterial,
  ConductorSize,
} from '@keyturn/electrics';
import { joinProblems, problem, type Problem } from './kind.ts';
import type { Question } from './question.ts';
import { figures, takeFigures, type Given } from './wanted.ts';

const sizeMissing = 'a cable size (as in 25 mm² or 2 AWG) is missing';

/** Tells whether an area or a gauge stands in the question. */
export function saysSize(question: Question): boolean {
  return question.figures('area').length + question.figures('gauge').length > 0;
}

/** The size of a cable, in mm2 or by its gauge. */
export function takeSize(
  question: Question,
): { readonly size: ConductorSize; readonly said: Given } | Problem {
  const found = takeFigures(question, {}, { areaMm2: figures.areaMm2, gauge: figures.gauge });
  if (found.type === 'problem') return found;
  const { areaMm2, gauge } = found;
  if (areaMm2 !== undefined && gauge !== undefined) {
    return problem(`two sizes, ${areaMm2.text} and ${gauge.text}: give one`, gauge.said);
  }
  if (areaMm2 !== undefined) return { size: { areaMm2: areaMm2.value }, said: areaMm2 };
  return gauge === undefined ? problem(sizeMissing) : { size: { awg: gauge.value }, said: gauge };
}

/** What a cable is made of, where that is said. */
export function takeMaterial(question: Question): ConductorMaterial | undefined {
  if (question.says('tinned', 'tinned copper')) return 'tinned-copper';
  if (question.says('aluminium', 'aluminum', 'alu')) return 'aluminium';
  question.says('copper');
  return undefined;
}

/** What the cable is made of, in the combinations for which there are figures. */
function takeMake(question: Question): ConductorMake | Problem {
  const material = takeMaterial(question);
  const isSolid = question.says('solid');
  const isClass2 = question.says('class 2', 'class 1');
  const isStranded = question.says('stranded');
  question.says('class 5', 'flexible', 'fine stranded');
  if (material === 'tinned-copper') {
    return isSolid || isClass2 || isStranded
      ? problem('tinned copper is known here as flexible cable (class 5) only')
      : { material, construction: 'class-5' };
  }
  if (material === 'aluminium') {
    if (isClass2) return problem('aluminium is known here as solid or stranded only');
    return { material, construction: isSolid ? 'solid' : 'stranded' };
  }
  if (isSolid) return { construction: 'solid' };
  if (isClass2) return { construction: 'class-2' };
  return { construction: isStranded ? 'stranded' : 'class-5' };
}

function makeText({ material = 'copper', construction }: ConductorMake): string {
  const metal = material === 'tinned-copper' ? 'tinned copper' : material;
  const made = {
    solid: 'solid',
    stranded: 'stranded',
    'class-2': 'class 2',
    'class-5': 'flexible (class 5)',
  };
  return `${made[construction ?? 'class-5']} ${metal}`;
}

/** A conductor with what was taken for granted of it. */
export type SaidConductor = {
  readonly type: 'conductor';
  readonly conductor: Conductor;
  readonly assumed: readonly string[];
};

const oneWay = 'the length is the conductor’s own, one way';

/** How many equal cables lie side by side: "2 x 25 mm2", "two in parallel". */
function takeStrands(question: Question): number | Problem | undefined {
  const beside = question.countOf('in parallel');
  const times = question.countOf('x');
  if (beside === 1) return problem('how many in parallel (as in two in parallel) is missing');
  return beside + times > 1 ? Math.max(beside, times) : undefined;
}

/** The conductor of a question. What it lacks is named together with what `others` lack. */
export function takeConductor(
  question: Question,
  ...others: readonly object[]
): SaidConductor | Problem {
  const strands = takeStrands(question);
  const make = takeMake(question);
  const { lengthM, temperatureC } = figures;
  const found = takeFigures(question, { length: lengthM }, { temperature: temperatureC });
  const size = takeSize(question);
  const wrong = joinProblems(
    found,
    size,
    make,
    ...(typeof strands === 'object' ? [strands] : []),
    ...others,
  );
  if (wrong !== undefined || found.type === 'problem' || 'type' in size || 'type' in make) {
    return wrong ?? problem(sizeMissing);
  }
  const { length, temperature } = found;
  return {
    type: 'conductor',
    // The make is one of the combinations that a conductor may have.
    conductor: {
      ...make,
      ...size.size,
      lengthM: length.value,
      temperatureC: temperature?.value,
      strands,
    } as Conductor,
    assumed: [makeText(make), ...(temperature === undefined ? ['the cable at 20 °C'] : []), oneWay],
  };
}
