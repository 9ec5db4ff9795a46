import { createRandom } from '#shared-core';
import {
  dissolvedGasGPerL,
  ethanolCarriedGPerG,
  type FermentReading,
  waterCarriedGPerG,
} from '../../shared-core/ferment/index.ts';
import type { DrawnFerment } from './draw-ferment.ts';
import type { TrueFerment } from './simulate-ferment.ts';

/** The log that a class would write of a ferment. */
export function readFerment(
  drawn: DrawnFerment,
  truth: TrueFerment,
  seed: string,
): readonly FermentReading[] {
  const random = createRandom(`${seed}/readings`);
  const { habits, volumeMl } = drawn;
  const round = (value: number, step: number) =>
    Number((Math.round(value / step) * step).toFixed(4));
  const at = (values: Float64Array, timeH: number) =>
    values[Math.min(values.length - 1, Math.round(timeH / truth.stepH))] as number;
  const losses = massLosses(drawn, truth, 1 + 0.25 * random.uniform());
  const tareG = 300 + 500 * random.uniform();
  const mustG = volumeMl * (truth.gravity[0] as number) * 0.9982;
  const massAt = (timeH: number) =>
    round(
      tareG + mustG - at(losses, timeH) + habits.massNoiseG * random.normal(),
      habits.massStepG ?? 1,
    );
  const visits = visitTimes(drawn);
  const written = visits.map((timeH, visit): FermentReading => {
    const temperatureC = at(truth.temperatureC, timeH);
    const off = visit === 0 ? habits.firstGravityOff : 0;
    const gravity = at(truth.gravity, timeH) + off + habits.gravityNoise * random.normal();
    return {
      timeH,
      gravity: habits.gravityStep === null ? null : round(gravity, habits.gravityStep),
      massG: habits.massStepG === null ? null : massAt(timeH),
      temperatureC: habits.readsTemperature ? round(temperatureC, 0.1) : null,
      bubblesPerMin: habits.countsBubbles
        ? countBubbles(drawn, truth, timeH, Math.exp(0.3 * random.normal()))
        : null,
      isDegassed: false,
    };
  });
  if (habits.massEveryH === null) return written;
  const own: FermentReading[] = [];
  for (let timeH = 0; timeH <= drawn.hours; timeH += habits.massEveryH) {
    own.push({
      timeH,
      gravity: null,
      massG: massAt(timeH),
      temperatureC: null,
      bubblesPerMin: null,
      isDegassed: false,
    });
  }
  return [...written, ...own].sort((a, b) => a.timeH - b.timeH);
}

function visitTimes({ habits, hours, startDay, startHourOfDay }: DrawnFerment): readonly number[] {
  const times = [0];
  for (let day = 0; day * 24 < hours; day += 1) {
    const weekday = (startDay + day) % 7;
    if (habits.skipsWeekends && weekday >= 5) continue;
    for (const hour of habits.hoursOfDay) {
      const timeH = day * 24 + hour - startHourOfDay;
      if (timeH > 2 && timeH < hours) times.push(timeH);
    }
  }
  return times;
}

/** What the vessel has lost [g], at every step: the gas beyond what stays dissolved, with what it takes along. */
function massLosses(drawn: DrawnFerment, truth: TrueFerment, held: number): Float64Array {
  const losses = new Float64Array(truth.gasGPerL.length);
  let [dissolved, lost] = [0, 0];
  for (let index = 1; index < losses.length; index += 1) {
    const temperatureC = truth.temperatureC[index] as number;
    dissolved += (truth.gasGPerL[index] as number) - (truth.gasGPerL[index - 1] as number);
    const most = held * dissolvedGasGPerL(temperatureC);
    const leaving = Math.max(0, dissolved - most);
    dissolved -= leaving;
    const carried =
      waterCarriedGPerG(temperatureC) +
      ethanolCarriedGPerG(Math.min(20, truth.abv[index] as number), temperatureC);
    lost += leaving * (1 + carried);
    losses[index] = (lost * drawn.volumeMl) / 1000;
  }
  return losses;
}

function countBubbles(
  { habits, volumeMl }: DrawnFerment,
  truth: TrueFerment,
  timeH: number,
  scatter: number,
): number {
  const index = Math.min(truth.gasGPerL.length - 3, Math.round(timeH / truth.stepH));
  const perH =
    ((truth.gasGPerL[index + 2] as number) - (truth.gasGPerL[index] as number)) / (2 * truth.stepH);
  const mlPerMin = (perH * (volumeMl / 1000) * 1000 * 0.55) / 60;
  const passes = habits.leak !== null && timeH >= habits.leak.fromH ? habits.leak.passes : 1;
  const perMin = (passes * mlPerMin * scatter) / habits.mlPerBubble;
  return perMin < 3 ? Math.round(perMin * 2) / 2 : Math.round(perMin);
}
