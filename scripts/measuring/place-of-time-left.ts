import { coverageFactor90, mapEstimate } from '../../shared-core/uncertainty/index.ts';
import { placeInInterval, type ToldInterval } from './place-in-interval.ts';

/**
 * Where the time that was left [s] fell in a 90 % range told of it, 0 … 1, by logarithms: a range of a time is so many times as
 * long or short.
 */
export function placeOfTimeLeft(leftS: number, toldS: ToldInterval): number {
  const logarithms = mapEstimate(toldS, logarithm);
  return placeInInterval(logarithm(leftS), logarithms, coverageFactor90);
}

/** Of nothing left: as of a second. */
function logarithm(leftS: number): number {
  return Math.log(Math.max(1, leftS));
}
