import { type RunInput, type RunSettings, standingMarks } from '../run/index.ts';
import { withPressure } from './situation/limit-scale.ts';

/**
 * The air pressure as it is known once people have read a barometer in the run: by the last one they read, with a barometer's doubt and
 * no more than before; an impossible reading is left aside. The monitor comes to the same.
 *
 * @param pressure as known before [kPa]
 * @param inputs in order of time; all that is no mark of a barometer's reading, or was taken back, says nothing
 *
 * Source: this project's choice.
 * @example
 * const mark = { kind: 'mark', markId: 1, timeS: 60, mark: { type: 'pressure-read', pressureKPa: 98.6 } };
 * pressureAfter(defaultRunSettings.pressure, [mark]).pressureKPa // => 98.6
 * pressureAfter(defaultRunSettings.pressure, [mark]).source // => "barometer"
 */
export function pressureAfter(
  pressure: RunSettings['pressure'],
  inputs: readonly RunInput[],
): RunSettings['pressure'] {
  let known = pressure;
  for (const { mark } of standingMarks(inputs)) {
    if (mark.type === 'pressure-read') known = withPressure(known, mark.pressureKPa, 'barometer');
  }
  return known;
}
