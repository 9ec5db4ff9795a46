import { estimateFrom } from './estimate-from.ts';
import { type PlanOutcome, sampleEveryS } from './run-member.ts';
import type { CoursePoint } from './run-plan.ts';

/** Points enough to draw a curve across a wide screen. */
const mostPoints = 240;

/** Head temperature against time, as long as half of the runs last; a run that has ended keeps its last value. */
export function expectedCourse(outcomes: readonly PlanOutcome[]): readonly CoursePoint[] {
  const usualCount = Math.round(
    estimateFrom(outcomes.map(({ samples }) => samples.length))?.value ?? 0,
  );
  const every = Math.max(1, Math.ceil(usualCount / mostPoints));
  const points: CoursePoint[] = [];
  for (let index = 0; index < usualCount; index += every) {
    const temperatures = outcomes.map(({ samples }) => {
      const sample = samples[Math.min(index, samples.length - 1)];
      return sample?.bulbTemperatureC ?? Number.NaN;
    });
    const headTemperatureC = estimateFrom(temperatures.filter(Number.isFinite));
    if (headTemperatureC !== null) {
      points.push({ timeS: (index + 1) * sampleEveryS, headTemperatureC });
    }
  }
  return points;
}
