import { estimateFrom } from './estimate-from.ts';
import type { PlanOutcome } from './run-member.ts';
import type { CoursePoint } from './run-plan.ts';

/** Points enough to draw a curve across a wide screen. */
const mostPoints = 240;

/** Head temperature against time over all runs; a run that has ended keeps its last value. */
export function expectedCourse(outcomes: readonly PlanOutcome[]): readonly CoursePoint[] {
  const [central] = outcomes;
  if (central === undefined) return [];
  const every = Math.max(1, Math.ceil(central.samples.length / mostPoints));
  const points: CoursePoint[] = [];
  for (let index = 0; index < central.samples.length; index += every) {
    const temperatures = outcomes.map(({ samples }) => {
      const sample = samples[Math.min(index, samples.length - 1)];
      return sample?.bulbTemperatureC ?? Number.NaN;
    });
    const headTemperatureC = estimateFrom(temperatures.filter(Number.isFinite));
    const timeS = central.samples[index]?.timeS;
    if (headTemperatureC !== null && timeS !== undefined) points.push({ timeS, headTemperatureC });
  }
  return points;
}
