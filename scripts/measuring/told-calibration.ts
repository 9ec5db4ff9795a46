import { coverageFactor95 } from '../../shared-core/uncertainty/index.ts';
import { calibrationLine } from './calibration-line.ts';
import { placeInInterval, type ToldInterval } from './place-in-interval.ts';
import { placeOfTimeLeft } from './place-of-time-left.ts';

interface ToldTruth {
  readonly truth: number;
  readonly told: ToldInterval;
}
type ByRun = readonly (readonly ToldTruth[])[];

/** Lines of where truths fell in strengths with 95 % intervals, and in times left with 90 % ranges. */
export const toldCalibration = {
  strengths: (name: string, runs: ByRun): string =>
    calibrationLine(
      name,
      runs.map((run) =>
        run.map(({ truth, told }) => placeInInterval(truth, told, coverageFactor95)),
      ),
    ),
  timesLeft: (name: string, runs: ByRun): string =>
    calibrationLine(
      name,
      runs.map((run) => run.map(({ truth, told }) => placeOfTimeLeft(truth, told))),
    ),
};
