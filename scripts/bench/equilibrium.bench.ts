/**
 * Speed of the equilibrium functions as ratios to a plain solve in the same run.
 *
 * Usage: npx tsx scripts/bench/equilibrium.bench.ts
 */
import { bubblePoint, createRandom, dewPoint, headVapour, headVapourTable } from '#shared-core';
import { isEntryPoint } from '../checks/is-entry-point.ts';
import { plainBubblePointC } from './plain-bubble-point.ts';

const pressureKPa = 98.6;
const count = 20_000;

/** The same for the inverse: bisection on the plain bubble point, to 1 mK. */
function plainHeadVapour(temperatureC: number): number {
  let [low, high] = [0, 0.9];
  while (high - low > 1e-5) {
    const middle = (low + high) / 2;
    if (plainBubblePointC(middle, pressureKPa) > temperatureC) low = middle;
    else high = middle;
  }
  return bubblePoint({ ethanolMoleFraction: low, pressureKPa }).vapourEthanolMoleFraction;
}

export async function run(): Promise<void> {
  const random = createRandom('equilibrium bench');
  const fractions = Array.from({ length: count }, () => random.uniform());
  const temperatures = Array.from({ length: count }, () => 78 + 21 * random.uniform());
  const uncertainties = { temperatureUncertaintyK: 0.1, pressureUncertaintyKPa: 0.2 };
  const table = headVapourTable(pressureKPa);

  const plain = nanoseconds(fractions, (x) => plainBubblePointC(x, pressureKPa));
  const plainInverse = nanoseconds(temperatures.slice(0, count / 20), plainHeadVapour);
  const rows = [
    ['plain Newton solve, bubble point', plain],
    [
      'bubblePoint',
      nanoseconds(
        fractions,
        (x) => bubblePoint({ ethanolMoleFraction: x, pressureKPa }).temperatureC,
      ),
    ],
    [
      'dewPoint',
      nanoseconds(fractions, (y) => dewPoint({ ethanolMoleFraction: y, pressureKPa }).temperatureC),
    ],
    ['plain inversion, head temperature → vapour', plainInverse],
    ['headVapourTable look-up', nanoseconds(temperatures, table.ethanolMoleFractionAt)],
    [
      'headVapour, with intervals',
      nanoseconds(
        temperatures,
        (temperatureC) =>
          headVapour({ temperatureC, pressureKPa, ...uncertainties }).ethanolMoleFraction.value,
      ),
    ],
    [
      'headVapourTable, built anew',
      nanoseconds(fractions.slice(0, 500), (x) => headVapourTable(60 + 50 * x).pressureKPa),
    ],
  ] as const;
  console.log('Equilibrium: time of one call, and speed relative to the plain bubble-point solve');
  for (const [name, time] of rows) {
    const ratio = plain / time;
    console.log(
      `  ${name.padEnd(44)} ${time.toFixed(time < 100 ? 1 : 0).padStart(9)} ns   ` +
        `× ${ratio.toPrecision(3)}`,
    );
  }
}

/** Median of five passes over the arguments [ns per call]; a checksum keeps the calls alive. */
function nanoseconds(values: readonly number[], of: (value: number) => number): number {
  const times: number[] = [];
  let checksum = 0;
  for (let pass = 0; pass < 6; pass++) {
    const start = performance.now();
    for (const value of values) checksum += of(value);
    times.push(((performance.now() - start) * 1e6) / values.length);
  }
  if (!Number.isFinite(checksum)) throw new Error('A benchmarked function returned NaN.');
  return times.slice(1).sort((a, b) => a - b)[2] ?? Number.NaN;
}

if (isEntryPoint(import.meta.url)) await run();
