import {
  alcoholByVolume,
  booksOfRun,
  densityKgPerM3,
  type MarkBody,
  type RunInput,
} from '#shared-core';
import { massFractionFromAlcoholByVolume } from '../../shared-core/alcoholometry/index.ts';
import { analyseRun } from '../../shared-core/monitor/index.ts';
import { createRandom, type Random } from '../../shared-core/random/index.ts';
import { byHandRun, endS, inputsOf } from '../by-hand/by-hand-run.ts';
import { byHandTruth } from '../by-hand/by-hand-truth.ts';
import { drawSecondRun, secondKinds } from '../second-still/draw-second-run.ts';
import { runSecondDraw } from '../second-still/report-second-run.ts';
import { drawRun, poorStills, teachingStills } from './draw-run.ts';
import type { ScoredRun } from './scored-run.ts';
import { simulateRun } from './simulate-run.ts';
import { readTruth } from './truth.ts';

/** The stills that strengths in the books are measured on. */
export const bookedStills = ['own', 'poor', 'second', 'by hand'] as const;
export type BookedStill = (typeof bookedStills)[number];

/** What of the volume was written down: what each receiver held in the end, that and every ten minutes, or a balance under it. */
export const volumeReads = ['in the end', 'every ten minutes', 'on a balance'] as const;
export type VolumeReads = (typeof volumeReads)[number];

/** A run whose distillate is known second by second. */
interface KnownRun {
  readonly run: Pick<ScoredRun, 'settings' | 'inputs' | 'endS' | 'heatOffS'>;
  readonly abv: readonly number[];
  readonly distilledMl: readonly number[];
  readonly arrivalS: number;
  /** When the receiver is changed, where it is: as the main fraction begins and as it ends. */
  readonly changesS: readonly number[];
  readonly random: Random;
}

/** A strength by the head in the books against the true one [% vol]. */
export interface CutError {
  readonly error: number;
  readonly halfWidth: number;
  readonly isCovered: boolean;
}

const readEveryS = 600;
const weighEveryS = 5;
const collectedForS = 300;
/** A cut of less says nothing of how it is weighed [mL]. */
const leastMl = 1;

/**
 * How well the books tell the strength of cuts that nobody measured, on stills whose strengths are known: receivers changed as the main fraction begins and ends, or
 * one for all that came over.
 */
export function booksStudy(runs: number, seed: string): readonly string[] {
  return bookedStills.flatMap((still) => {
    const known = Array.from({ length: runs }, (_, index) => knownRun(still, `${seed}/${index}`));
    return [true, false].flatMap((isWhole) =>
      volumeReads.map((reads) => {
        const errors = known.flatMap((run) => (run === null ? [] : cutErrors(run, isWhole, reads)));
        return bookLine(`${still}, ${isWhole ? 'one receiver' : 'changed'}, read ${reads}`, errors);
      }),
    );
  });
}

function bookLine(name: string, errors: readonly CutError[]): string {
  const mean = (of: (error: CutError) => number) =>
    errors.reduce((sum, error) => sum + of(error), 0) / errors.length;
  const rms = Math.sqrt(mean(({ error }) => error ** 2));
  const covered = 100 * mean(({ isCovered }) => Number(isCovered));
  return `${name.padEnd(44)} ${errors.length} cuts: off by ${mean(({ error }) => error).toFixed(2)} on average, ${rms.toFixed(2)} rms, told ± ${mean(({ halfWidth }) => halfWidth).toFixed(2)} % vol, ${covered.toFixed(0)} % covered`;
}

/** Null for a run in which no vapour reached the head. */
export function knownRun(still: BookedStill, seed: string): KnownRun | null {
  if (still === 'by hand') {
    const run = byHandRun(`books ${seed}`);
    const { abv, distilledMl, heatOffS } = run.course;
    const scored = { settings: run.settings, inputs: inputsOf(run, []), endS: endS(run), heatOffS };
    return asKnown(scored, abv, distilledMl, byHandTruth(run), seed);
  }
  const run =
    still === 'second'
      ? runSecondDraw(drawSecondRun(`books ${seed}`, secondKinds))
      : simulateRun(drawRun(`books ${seed}`, still === 'own' ? teachingStills : poorStills));
  return asKnown(
    run,
    run.samples.map(({ headVapourStrengthAbv }) => headVapourStrengthAbv),
    run.samples.map(({ distillateVolumeMl }) => distillateVolumeMl),
    readTruth(run),
    seed,
  );
}

function asKnown(
  run: KnownRun['run'],
  abv: readonly number[],
  distilledMl: readonly number[],
  truth: {
    readonly arrivalS: number | null;
    readonly mainFromS: number | null;
    readonly limitS: number | null;
  },
  seed: string,
): KnownRun | null {
  if (truth.arrivalS === null) return null;
  const changesS = [truth.mainFromS, truth.limitS].flatMap((timeS) =>
    timeS !== null && timeS < run.heatOffS - 120 ? [timeS] : [],
  );
  const random = createRandom(`books read ${seed}`);
  return { run, abv, distilledMl, arrivalS: truth.arrivalS, changesS, random };
}

/** The cuts of a run in the books beside what truly came over into each. */
export function cutErrors(
  known: KnownRun,
  isWhole: boolean,
  reads: VolumeReads,
): readonly CutError[] {
  const { run, changesS, distilledMl, abv } = known;
  const lastS = Math.min(run.endS, run.heatOffS + collectedForS);
  const boundsS = [0, ...(isWhole ? [] : changesS), lastS];
  if (!isWhole && changesS.length === 0) return [];
  const inputs = [
    ...run.inputs.filter(({ kind }) => kind !== 'mark'),
    ...marksOf(known, boundsS, reads),
    ...(reads === 'on a balance' ? weighings(known, boundsS) : []),
  ].toSorted((a, b) => a.timeS - b.timeS);
  const { settings, endS: ended } = run;
  const verdicts = analyseRun(settings, inputs, ended);
  return booksOfRun({ settings, inputs, verdicts, endS: ended }).cuts.flatMap(
    ({ booked, number }) => {
      const [fromS, toS] = [boundsS[number - 1] ?? 0, boundsS[number] ?? lastS];
      if (booked === null || gainedMl(distilledMl, fromS, toS) < leastMl) return [];
      const { value, low, high } = booked.strengthAbv;
      const truth = collectedAbv(distilledMl, abv, fromS, toS);
      return [
        {
          error: value - truth,
          halfWidth: (high - low) / 2,
          isCovered: low <= truth && truth <= high,
        },
      ];
    },
  );
}

const gainedMl = (distilledMl: readonly number[], fromS: number, toS: number) =>
  (distilledMl[Math.round(toS)] ?? 0) - (distilledMl[Math.round(fromS)] ?? 0);

const receiverFromS = (boundsS: readonly number[], timeS: number) =>
  boundsS.findLast((boundS) => boundS < timeS) ?? 0;

/** The heat as it was marked, receivers and readings of a measuring cylinder to half a millilitre. */
function marksOf(
  { run, distilledMl, arrivalS, random }: KnownRun,
  boundsS: readonly number[],
  reads: VolumeReads,
): readonly RunInput[] {
  const cylinderMl = (fromS: number, toS: number) =>
    Math.max(0, Math.round(2 * (gainedMl(distilledMl, fromS, toS) + 0.25 * random.normal())) / 2);
  const heat = run.inputs.flatMap((input): (readonly [number, MarkBody])[] =>
    input.kind === 'mark' && input.mark.type.startsWith('heat') ? [[input.timeS, input.mark]] : [],
  );
  const changes = boundsS.slice(1, -1).map((timeS, index): readonly [number, MarkBody] => {
    return [timeS, { type: 'receiver-changed', volumeMl: cylinderMl(boundsS[index] ?? 0, timeS) }];
  });
  const read = (timeS: number): readonly [number, MarkBody] => [
    timeS,
    { type: 'volume-read', volumeMl: cylinderMl(receiverFromS(boundsS, timeS), timeS) },
  ];
  const meanwhileS =
    reads !== 'every ten minutes'
      ? []
      : Array.from(
          { length: Math.max(0, Math.floor((run.heatOffS - 60 - arrivalS) / readEveryS)) },
          (_, index) => arrivalS + (index + 1) * readEveryS,
        );
  return [
    ...heat,
    [run.heatOffS, { type: 'heat-off' }] as const,
    ...changes,
    ...[...meanwhileS, boundsS.at(-1) ?? 0].map(read),
  ]
    .toSorted((a, b) => a[0] - b[0])
    .map(([timeS, mark], index) => ({ kind: 'mark', timeS, markId: index + 1, mark }));
}

/** A balance to a tenth of a gram whose last digit flickers. */
function weighings(
  { run, distilledMl, abv, random }: KnownRun,
  boundsS: readonly number[],
): readonly RunInput[] {
  const made: RunInput[] = [];
  let massG = 0;
  for (let timeS = 1; timeS <= run.endS; timeS += 1) {
    if (boundsS.includes(timeS - 1)) massG = 0;
    massG += gainedMl(distilledMl, timeS - 1, timeS) * gramsPerMl(abv[timeS] ?? 0);
    if (timeS % weighEveryS !== 0) continue;
    const value = Math.round(10 * (massG + 0.05 * random.normal())) / 10;
    made.push({ kind: 'reading', timeS, channel: 'receiver', value, unit: 'g', quality: 'good' });
  }
  return made;
}

function gramsPerMl(strengthAbv: number): number {
  const ethanolMassFraction = fractionOf(strengthAbv);
  return densityKgPerM3({ ethanolMassFraction, temperatureC: 20 }) / 1000;
}

const fractionOf = (strengthAbv: number) =>
  massFractionFromAlcoholByVolume({ alcoholByVolume: Math.min(100, strengthAbv) });

/** Poured together by mass, second by second. */
function collectedAbv(
  distilledMl: readonly number[],
  abv: readonly number[],
  fromS: number,
  toS: number,
): number {
  let [massG, ethanolG] = [0, 0];
  for (let timeS = Math.round(fromS) + 1; timeS <= toS; timeS += 1) {
    const grams =
      Math.max(0, gainedMl(distilledMl, timeS - 1, timeS)) * gramsPerMl(abv[timeS] ?? 0);
    massG += grams;
    ethanolG += grams * fractionOf(abv[timeS] ?? 0);
  }
  return alcoholByVolume({ ethanolMassFraction: ethanolG / massG });
}
