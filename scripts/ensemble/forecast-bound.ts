import { createRandom } from '#shared-core';
import {
  type Beside,
  benchOf,
  drawHalfRun,
  forecastHalfWay,
} from '../../shared-core/planning/index.ts';
import { quantile } from '../measuring/quantile.ts';
import { drawRun } from './draw-run.ts';

/** What is seen of each still: the head alone, or with a heat stated beside it, or the receiver, read every four minutes. */
const seen: readonly (readonly [beside: Beside, words: string])[] = [
  ['nothing', 'by the head alone'],
  ['stated-heat', 'with a stated heat'],
  ['balance', 'with a balance or volume marks'],
];

/**
 * What the forecast would reach if the still were as the twin believes stills to be, its heat restless and its head off the course by as
 * much as the twin reckons with: what is left comes from what a head thermometer and a receiver cannot tell. No better model can
 * go below it without more being measured, or more being known of stills before.
 */
export function forecastBound(runs: number, seed: string): readonly string[] {
  const halves = Array.from({ length: runs }, (_, index) => {
    const { settings } = drawRun(`bound ${seed}/${index}`);
    const bench = benchOf(settings);
    const half = drawHalfRun(bench, createRandom(`bound ${seed} ${index}`));
    return half === null ? [] : [{ half, bench }];
  }).flat();
  return seen.map(([beside, words]) => {
    const told = halves.map(({ half, bench }) => ({
      leftS: half.leftS,
      left: forecastHalfWay(half, beside, bench),
    }));
    const errors = told.map(({ leftS, left }) => Math.abs(left.value - leftS) / leftS);
    const covered = told.filter(({ leftS, left }) => left.low <= leftS && leftS <= left.high);
    return `forecast at half-way ${words}, if the twin were the still: n ${told.length}, median error ${(100 * quantile(errors, 0.5)).toFixed(1)} %, 90 % interval covers ${((100 * covered.length) / told.length).toFixed(1)} %`;
  });
}
