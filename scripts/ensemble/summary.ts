import { calibrationLine, type PlacesByRun } from '../measuring/calibration-line.ts';
import { quantile } from '../measuring/quantile.ts';
import type { CallScore, RunScore } from './score-run.ts';

const present = (values: readonly (number | null)[]): number[] =>
  values.filter((value): value is number => value !== null);

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** One line of the heat-off table. */
export function callLine(name: string, calls: readonly CallScore[], plateauHours: number): string {
  const falseCalls = calls.reduce((sum, call) => sum + call.falseCalls, 0);
  const earlyCalls = calls.reduce((sum, call) => sum + call.earlyCalls, 0);
  const weak = present(calls.map(({ weakShare }) => weakShare));
  const lost = present(calls.map(({ lostShare }) => lostShare));
  const lostAtCall = present(calls.map(({ lostShareAtCall }) => lostShareAtCall));
  const lead = present(calls.map(({ leadS }) => leadS));
  return [
    name.padEnd(18),
    `missed ${calls.filter(({ missed }) => missed).length} (late by time alone ${calls.filter(({ late }) => late).length})`.padEnd(
      37,
    ),
    `false/100 h ${((100 * falseCalls) / plateauHours).toFixed(1)} (early by time alone ${((100 * earlyCalls) / plateauHours).toFixed(1)})`.padEnd(
      46,
    ),
    `weak before call: median ${percent(quantile(weak, 0.5))}, 95th ${percent(quantile(weak, 0.95))}`.padEnd(
      46,
    ),
    `lost early: median ${percent(quantile(lost, 0.5))} (at the call ${percent(quantile(lostAtCall, 0.5))})`.padEnd(
      44,
    ),
    `lead 5/50/95th ${[0.05, 0.5, 0.95].map((share) => quantile(lead, share).toFixed(0)).join('/')} s`,
  ].join('  ');
}

/** Everything else, one figure a line. */
export function summariseScores(scores: readonly RunScore[]): readonly string[] {
  const agreement = scores.map(({ stageAgreement }) => stageAgreement);
  const lines: string[] = [
    `stage agreement: mean ${percent(mean(agreement))}, 5th percentile ${percent(quantile(agreement, 0.05))}`,
    `runs in which a stage moved backward: ${scores.filter(({ wentBackward }) => wentBackward).length}`,
    `main-fraction verdict agrees with the truth in ${scores.filter(({ mainAgrees }) => mainAgrees).length} of ${scores.length}`,
    `alarms per hour up to the heat-off: mean ${mean(scores.map(({ alarmsPerHour }) => alarmsPerHour)).toFixed(2)}, largest ${Math.max(...scores.map(({ alarmsPerHour }) => alarmsPerHour)).toFixed(1)}`,
  ];
  const strengths = scores.flatMap((score) => score.strengths);
  const held = strengths.filter(({ covered }) => covered).length;
  lines.push(
    `interval of the strength at the head holds the truth in ${percent(held / strengths.length)} of ${strengths.length} minutes`,
    strengthCalibration('where the true strength fell', scores),
    `prompts to take the heat off a run: mean ${mean(scores.map(({ heatOffPrompts }) => heatOffPrompts)).toFixed(2)}, most ${Math.max(...scores.map(({ heatOffPrompts }) => heatOffPrompts))}`,
  );
  for (const withVolumes of [false, true]) {
    lines.push(...minuteLines(scores, withVolumes));
    for (const share of [0.25, 0.5, 0.75]) {
      const made = scores
        .flatMap(({ forecasts }) => forecasts)
        .filter((item) => item.plateauShare === share && item.withVolumes === withVolumes);
      if (made.length === 0) continue;
      const covered = made.filter((item) => item.covered).length / made.length;
      const error = quantile(
        made.map(({ relativeError }) => relativeError),
        0.5,
      );
      const signed = quantile(
        made.map(({ signedError }) => signedError),
        0.5,
      );
      lines.push(
        `forecast at ${100 * share} % of the plateau ${withVolumes ? 'with' : 'without'} volume marks: n ${made.length}, 90 % interval covers ${percent(covered)}, median error ${percent(error)} (signed ${percent(signed)})`,
        calibrationLine(
          '  where the true end fell',
          byRun(scores, ({ forecasts }) => forecasts.filter((item) => made.includes(item))),
        ),
      );
    }
  }
  return lines;
}

/**
 * How ranges held minute by minute. Only so can they hold as often as they say: whoever looks half-way knows by the clock that as much
 * is left as has passed, and the forecast does not.
 */
function minuteLines(scores: readonly RunScore[], withVolumes: boolean): readonly string[] {
  const ofRuns = scores.map(({ minutes }) =>
    minutes.filter((item) => item.withVolumes === withVolumes),
  );
  const all = ofRuns.flat();
  if (all.length === 0) return [];
  const covered = all.filter((item) => item.covered).length / all.length;
  const name = `forecast of every minute ${withVolumes ? 'with' : 'without'} volume marks`;
  return [
    `${name}: n ${all.length}, 90 % interval covers ${percent(covered)}`,
    calibrationLine(
      '  where the true end fell',
      ofRuns.map((minutes) => minutes.map(({ place }) => place)),
    ),
  ];
}

/** What matters most of the runs of one kind. */
export function kindLine(kind: string, scores: readonly RunScore[]): string {
  const count = (of: (score: RunScore) => number): number =>
    scores.reduce((sum, score) => sum + of(score), 0);
  const forecasts = scores.flatMap((score) => score.forecasts);
  const covered = forecasts.filter((item) => item.covered).length;
  return [
    `${kind} (${scores.length})`.padEnd(24),
    `missed ${count(({ call }) => Number(call.missed))}, false ${count(({ call }) => call.falseCalls)}`.padEnd(
      20,
    ),
    `stages ${percent(mean(scores.map(({ stageAgreement }) => stageAgreement)))}`,
    `verdict right ${count(({ mainAgrees }) => Number(mainAgrees))}`,
    `alarms/h at most ${Math.max(...scores.map(({ alarmsPerHour }) => alarmsPerHour)).toFixed(1)}`,
    `forecasts held ${covered} of ${forecasts.length}`,
  ].join('  ');
}

/** Where truths fell in what was told of them in the runs of one kind. */
export function kindCalibration(kind: string, scores: readonly RunScore[]): readonly string[] {
  return [
    calibrationLine(
      `${kind}, forecast`,
      byRun(scores, ({ forecasts }) => forecasts),
    ),
    strengthCalibration(`${kind}, strength`, scores),
  ];
}

function strengthCalibration(name: string, scores: readonly RunScore[]): string {
  return calibrationLine(
    name,
    byRun(scores, ({ strengths }) => strengths),
  );
}

function byRun(
  scores: readonly RunScore[],
  of: (score: RunScore) => readonly { readonly place: number }[],
): PlacesByRun {
  return scores.map((score) => of(score).map(({ place }) => place));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
