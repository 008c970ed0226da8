/**
 * The numbers alone: is a battery weak, and is a cable bad?
 *
 * Run with `npx tsx examples/readings.ts` after the packages have been built.
 */
import { bandWeights, copperResistance, internalResistance, limit } from '@keyturn/electrics';

const percent = (share: number | undefined): string => `${Math.round((share ?? 0) * 100)} %`;

// 9.55 V after 15 s of load at 20 °C: below the limit, and yet too near it to condemn a battery.
const minimum = limit('battery.load-test.minimum', { temperature: 20 });
if (minimum.type === 'bound') {
  const [failed] = bandWeights({ value: 9.55, unit: 'V', resolution: 0.01 }, [minimum.bound]);
  console.log(`limit ${minimum.bound.low.toFixed(2)} V (${minimum.bound.source.text})`);
  console.log(`failed: ${percent(failed)} likely`);
}

// It rested at 12.5 V and fell to 9.7 V with 180 A.
const battery = internalResistance(12.5, 9.7, 180);
console.log(`the battery has ${battery.best.toFixed(1)} mOhm`);

// 1.5 m of clean 25 mm² copper at 20 °C.
const cable = copperResistance({ areaMm2: 25, lengthM: 1.5, temperatureC: 20 });
console.log(`the cable has ${cable.value.toFixed(2)} ${cable.unit}`);
