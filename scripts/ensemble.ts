/**
 * Measures the monitor against simulated runs whose parameters it is not told.
 *
 * Usage: npx tsx scripts/ensemble.ts [--runs 500] [--seed 1] [--list] [--poor] [--delays] [--conditions] [--bound]
 * With --poor the stills have little or no column. With --delays it compares the plateau-ending test with the best
 * known-slope test instead, with --conditions it measures the alarms that have nothing to do with the main fraction,
 * with --bound the forecast as it would be if the twin were the still.
 */
import process from 'node:process';
import { parseArgs } from 'node:util';
import { conditionsStudy } from './ensemble/conditions-study.ts';
import { delayStudy } from './ensemble/delay-study.ts';
import { drawRun, poorStills, teachingStills } from './ensemble/draw-run.ts';
import { fixedRuleCalls, fixedRules } from './ensemble/fixed-rules.ts';
import { forecastBound } from './ensemble/forecast-bound.ts';
import { type CallScore, type RunScore, scoreCalls, scoreRun } from './ensemble/score-run.ts';
import { simulateRun } from './ensemble/simulate-run.ts';
import { callLine, summariseScores } from './ensemble/summary.ts';
import { readTruth } from './ensemble/truth.ts';

const { values: options } = parseArgs({
  options: {
    runs: { type: 'string', default: '500' },
    seed: { type: 'string', default: '1' },
    list: { type: 'boolean', default: false },
    poor: { type: 'boolean', default: false },
    bound: { type: 'boolean', default: false },
    conditions: { type: 'boolean', default: false },
    delays: { type: 'boolean', default: false },
  },
});
if (options.delays) {
  for (const line of delayStudy(100, 60)) console.log(line);
  process.exit(0);
}
const runs = Number(options.runs);
if (options.bound) {
  for (const line of forecastBound(runs, options.seed)) console.log(line);
  process.exit(0);
}
if (options.conditions) {
  for (const line of conditionsStudy(runs, options.seed)) console.log(line);
  process.exit(0);
}

const stills = options.poor ? poorStills : teachingStills;
const scores: RunScore[] = [];
const ruleCalls = new Map<string, CallScore[]>(fixedRules.map(({ name }) => [name, []]));
let withMain = 0;

for (let index = 0; index < runs; index += 1) {
  const run = simulateRun(drawRun(`${options.seed}/${index}`, stills));
  const truth = readTruth(run);
  const score = scoreRun(run, truth);
  scores.push(score);
  if (truth.mainFromS !== null) withMain += 1;
  for (const rule of fixedRules) {
    ruleCalls.get(rule.name)?.push(scoreCalls(run, truth, fixedRuleCalls(rule, run)));
  }
  if (options.list) {
    const { call } = score;
    const { plates, refluxRatio, flaws, settings } = run.drawn;
    console.log(
      `${index} N ${plates.toFixed(1)} R ${refluxRatio.toFixed(1)} P ${settings.pressure.pressureKPa.toFixed(0)} bias ${flaws.biasK?.toFixed(2)} main ${truth.mainFromS}–${truth.limitS} lead ${call.leadS} false ${call.falseCalls}${call.missed ? ' MISSED' : ''} agree ${(100 * score.stageAgreement).toFixed(1)} alarms/h ${score.alarmsPerHour.toFixed(1)} verdict ${score.mainAgrees} forecasts ${score.forecasts.map((item) => `${item.signedError.toFixed(2)}${item.covered ? '' : '!'}`).join(' ')}`,
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
