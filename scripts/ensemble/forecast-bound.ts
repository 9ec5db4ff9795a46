import { createRandom } from '#shared-core';
import {
  courseAt,
  createTwin,
  distillateAt,
  drawWalk,
  emptyCourse,
  guessPrior,
  runCourse,
  toGuess,
} from '../../shared-core/twin/index.ts';
import { quantile } from '../measuring/quantile.ts';
import { drawRun } from './draw-run.ts';

/** The head where the vapour is at 80 % vol, above the azeotrope [K]. */
const limitHeightK = 5;
const biasSdK = 0.27;
const headNoiseK = 0.06;
const receiverNoiseMl = 0.3;
const volumeEveryS = 360;
const leastMainS = 900;

/**
 * What the forecast would reach if the still were exactly as the twin models it, with its unknowns drawn from the
 * twin's own prior: the error that is left comes from what a head thermometer and a receiver cannot tell. No better
 * model can go below it without more being measured.
 */
export function forecastBound(runs: number, seed: string): readonly string[] {
  return [false, true].map((withVolumes) => {
    const errors: number[] = [];
    let covered = 0;
    for (let index = 0; index < runs; index += 1) {
      const { settings } = drawRun(`bound ${seed}/${index}`);
      const random = createRandom(`bound ${seed} ${index}`);
      const heatUp = { tookS: 1200, eased: null };
      const guess = toGuess(drawWalk(guessPrior(settings, heatUp, biasSdK), random));
      const course = emptyCourse();
      runCourse(guess, settings.charge.volumeMl, limitHeightK + 2.5, course);
      const endCell = course.headHeightK.findIndex(
        (height, cell) => cell < course.count && height >= limitHeightK,
      );
      const endS = endCell * course.stepS;
      if (endS < leastMainS) continue;
      const twin = createTwin(settings, heatUp, biasSdK, limitHeightK);
      const halfS = 60 * Math.round(endS / 120);
      for (let boiledS = 180; boiledS <= halfS; boiledS += 60) {
        const height = courseAt(course, course.headHeightK, boiledS);
        const value = height + guess.biasK + headNoiseK * random.normal();
        twin.see({ kind: 'head', boiledS, value, sd: headNoiseK });
        if (withVolumes && boiledS % volumeEveryS === 0) {
          const volumeMl = distillateAt(course, boiledS) + receiverNoiseMl * random.normal();
          twin.see({ kind: 'volume', boiledS, value: volumeMl, sd: 0.5 });
        }
        twin.update();
      }
      const { limitInS } = twin.outlook(halfS, limitHeightK, null);
      const leftS = endS - halfS;
      errors.push(Math.abs(limitInS.value - leftS) / leftS);
      if (limitInS.low <= leftS && leftS <= limitInS.high) covered += 1;
    }
    return `forecast at half-way ${withVolumes ? 'with' : 'without'} volume marks, if the twin were the still: n ${errors.length}, median error ${(100 * quantile(errors, 0.5)).toFixed(1)} %, 90 % interval covers ${((100 * covered) / errors.length).toFixed(1)} %`;
  });
}
