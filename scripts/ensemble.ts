/**
 * Measures the monitor against simulated runs whose parameters it is not told.
 *
 * Usage: npx tsx scripts/ensemble.ts [--runs 500] [--seed 1] [--list] [--poor] [--with balance,stated-heat,pot-probe] [--second-still [--kinds plain,water]]
 *        npx tsx scripts/ensemble.ts --by-hand [--runs 300] [--seed 1] [--list] [--save FILE | --from FILE] [--with steam]
 *        npx tsx scripts/ensemble.ts --delays | --conditions | --bound | --books
 * With --poor the stills have little or no column; with --with instruments stand beside the head, or the heat is stated within 5 %. With --second-still they are simulated by other physics than the
 * project's own, and each kind of run has a line of its own. With --by-hand a third still is heated as people do, mostly with a flame
 * that is taken away and put back; its runs can be kept in a file and judged again, with a reading of
 * their own probe in steam where nobody knew the air pressure, and
 * what other channels can do to its calls is measured by scripts/channel-faults.ts. With --delays it compares the plateau-ending test with the best
 * test that has the same unknowns instead, with --conditions it measures the alarms that have nothing to do with the main fraction,
 * with --bound the forecast as it would be if the twin were the still, with --books the strengths in the books of cuts that nobody measured.
 */
import process from 'node:process';
import { parseArgs } from 'node:util';
import { measureByHand } from './by-hand/measure-by-hand.ts';
import { settingsWithSteam } from './by-hand/steam-before-run.ts';
import { watchRun } from './by-hand/watch-run.ts';
import { booksStudy } from './ensemble/books-study.ts';
import { conditionsStudy } from './ensemble/conditions-study.ts';
import { delayStudy } from './ensemble/delay-study.ts';
import { drawRun, instruments, poorStills, teachingStills } from './ensemble/draw-run.ts';
import { fixedRuleCalls, fixedRules } from './ensemble/fixed-rules.ts';
import { forecastBound } from './ensemble/forecast-bound.ts';
import { type CallScore, type RunScore, scoreCalls, scoreRun } from './ensemble/score-run.ts';
import type { ScoredRun } from './ensemble/scored-run.ts';
import { simulateRun } from './ensemble/simulate-run.ts';
import { callLine, kindCalibration, kindLine, summariseScores } from './ensemble/summary.ts';
import { readTruth } from './ensemble/truth.ts';
import { toldCalibration } from './measuring/told-calibration.ts';
import { drawSecondRun, secondKinds } from './second-still/draw-second-run.ts';
import { runSecondDraw } from './second-still/report-second-run.ts';

const { values: options } = parseArgs({
  options: {
    runs: { type: 'string', default: '500' },
    seed: { type: 'string', default: '1' },
    list: { type: 'boolean', default: false },
    poor: { type: 'boolean', default: false },
    with: { type: 'string', default: '' },
    'second-still': { type: 'boolean', default: false },
    kinds: { type: 'string', default: '' },
    'by-hand': { type: 'boolean', default: false },
    save: { type: 'string' },
    from: { type: 'string' },
    bound: { type: 'boolean', default: false },
    conditions: { type: 'boolean', default: false },
    delays: { type: 'boolean', default: false },
    books: { type: 'boolean', default: false },
  },
});
if (options.delays) {
  for (const line of delayStudy(100, 60)) console.log(line);
  process.exit(0);
}
const runs = Number(options.runs);
if (options['by-hand']) {
  const { seed, list, save = null, from = null } = options;
  measureByHand({
    runs,
    seed,
    list,
    save,
    from,
    known:
      readNames(options.with, ['steam'], []).length > 0
        ? settingsWithSteam
        : ({ settings }) => settings,
    watch: watchRun,
    calibration: toldCalibration,
  });
  process.exit(0);
}
if (options.bound) {
  for (const line of forecastBound(runs, options.seed)) console.log(line);
  process.exit(0);
}
if (options.books) {
  for (const line of booksStudy(runs, options.seed)) console.log(line);
  process.exit(0);
}
if (options.conditions) {
  for (const line of conditionsStudy(runs, options.seed)) console.log(line);
  process.exit(0);
}

const stills = options.poor ? poorStills : teachingStills;
const kinds = readNames(options.kinds, secondKinds, secondKinds);
const beside = readNames(options.with, instruments, []);

/** The run of an index, and what it is in a few words. */
function runOf(index: number): {
  readonly run: ScoredRun;
  readonly words: string;
  readonly kind: string;
} {
  const seed = `${options.seed}/${index}`;
  if (options['second-still']) {
    const draw = drawSecondRun(seed, kinds);
    const { stages, refluxRatio, pressureKPa } = draw.still;
    const words = `${draw.kind} stages ${stages.length} R ${refluxRatio.toFixed(1)} P ${pressureKPa.toFixed(0)}`;
    return { run: runSecondDraw(draw), words, kind: draw.kind };
  }
  const run = simulateRun(drawRun(seed, stills, beside));
  const { plates, refluxRatio, flaws } = run.drawn;
  const words = `N ${plates.toFixed(1)} R ${refluxRatio.toFixed(1)} P ${run.settings.pressure.pressureKPa.toFixed(0)} bias ${flaws.biasK?.toFixed(2)}`;
  return { run, words, kind: 'own' };
}

const scores: RunScore[] = [];
const byKind = new Map<string, RunScore[]>();
const ruleCalls = new Map<string, CallScore[]>(fixedRules.map(({ name }) => [name, []]));
let withMain = 0;

for (let index = 0; index < runs; index += 1) {
  const { run, words, kind } = runOf(index);
  const truth = readTruth(run);
  const score = scoreRun(run, truth);
  scores.push(score);
  byKind.set(kind, [...(byKind.get(kind) ?? []), score]);
  if (truth.mainFromS !== null) withMain += 1;
  for (const rule of fixedRules) {
    ruleCalls.get(rule.name)?.push(scoreCalls(run, truth, fixedRuleCalls(rule, run)));
  }
  if (options.list) {
    const { call } = score;
    console.log(
      `${index} ${words} main ${truth.mainFromS}–${truth.limitS} lead ${call.leadS} false ${call.falseCalls}${call.missed ? ' MISSED' : ''} agree ${(100 * score.stageAgreement).toFixed(1)} alarms/h ${score.alarmsPerHour.toFixed(1)} verdict ${score.mainAgrees} forecasts ${score.forecasts.map((item) => `${item.signedError.toFixed(2)}${item.covered ? '' : '!'}`).join(' ')}`,
    );
  }
  if (process.stderr.isTTY) process.stderr.write(`\r${index + 1} of ${runs} runs`);
}

const plateauHours = scores.reduce((sum, { plateauHours: hours }) => sum + hours, 0);
console.log(
  `${runs} runs, seed ${options.seed}: ${withMain} with a main fraction, ${plateauHours.toFixed(0)} plateau-hours`,
);
console.log(
  callLine(
    'this monitor',
    scores.map(({ call }) => call),
    plateauHours,
  ),
);
for (const [name, calls] of ruleCalls) console.log(callLine(name, calls, plateauHours));
for (const line of summariseScores(scores)) console.log(line);
if (byKind.size > 1) {
  for (const [kind, ofKind] of byKind) console.log(kindLine(kind, ofKind));
  for (const [kind, ofKind] of byKind) {
    for (const line of kindCalibration(kind, ofKind)) console.log(line);
  }
}

/** Names given on the command line, of those there are. */
function readNames<Name extends string>(
  text: string,
  known: readonly Name[],
  ifNone: readonly Name[],
): readonly Name[] {
  const wanted = text === '' ? [] : text.split(',');
  const unknown = wanted.find((name) => !known.some((item) => item === name));
  if (unknown !== undefined) {
    console.error(`There is no ${unknown} here; there are: ${known.join(', ')}.`);
    process.exit(2);
  }
  return wanted.length === 0 ? ifNone : known.filter((name) => wanted.includes(name));
}
