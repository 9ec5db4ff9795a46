/*
 * The reference probe's one-wire sketch in a simulated chip, beside a sensor that fails now and then, for many readings:
 * `npx tsx test/scripts/reference-probe/many-readings.ts 10000 [SEED]`.
 */
import { compileSketch } from './compile-sketch.ts';
import { linesOfFaultyWire } from './faulty-wire.ts';
import { judgeLines } from './judge-lines.ts';

const [seconds = 10_000, seed = 1] = process.argv.slice(2).map(Number);
compileSketch('one-wire-probe')
  .then((flash) => {
    const verdict = judgeLines(linesOfFaultyWire(flash, seed, seconds));
    process.stdout.write(`${JSON.stringify(verdict)}\n`);
    const isSound = verdict.untrue.length === 0 && verdict.invented === 0 && verdict.withheld === 0;
    process.exitCode = isSound ? 0 : 1;
  })
  .catch((error: unknown) => {
    process.stderr.write(`${String(error)}\n`);
    process.exitCode = 1;
  });
