import type { RunInput, RunSettings } from '../run/index.ts';
import { createStoodPressure } from './sense/stood-pressure.ts';
import { withHeardPressure } from './situation/limit-scale.ts';

/**
 * The air pressure that a run is reckoned by, as far as people have read none in it: that of its settings, or, where this was only
 * guessed at, what a barometer on the line first showed for a minute. The monitor comes to the same in the run.
 *
 * @param pressure as in the settings [kPa]
 * @param inputs of the run, in order of time
 *
 * Source: this project's choice; see `createStoodPressure` for why nothing that comes later is followed.
 * @example
 * heardPressure(defaultRunSettings.pressure, []).source // => "assumed"
 */
export function heardPressure(
  pressure: RunSettings['pressure'],
  inputs: Iterable<RunInput>,
): RunSettings['pressure'] {
  // A long record need not be gone through for what a person has read.
  if (pressure.source !== 'assumed' && pressure.source !== 'altitude') return pressure;
  const stood = createStoodPressure();
  for (const input of inputs) {
    if (input.kind !== 'reading' || input.channel !== 'air-pressure') continue;
    if (input.quality !== 'good') continue;
    const stoodKPa = stood.see(input.timeS, input.value);
    if (stoodKPa !== null) return withHeardPressure(pressure, stoodKPa);
  }
  return pressure;
}
