import { moleFractionFromStrength } from '../alcoholometry/index.ts';
import { bubblePoint } from '../equilibrium/index.ts';
import type { RunSettings } from '../run/index.ts';
import { worded } from '../wording/index.ts';
import type { VolumePoint } from './volume-course.ts';

/** What bulb, scale and book together may be off [K]; chosen here. */
const allowedK = 2;

/**
 * Whether the last head temperature agrees with what must be left in the pot: vapour is never hotter than the boiling liquid it rises from. What is
 * left follows from the charge less what the temperatures say came over.
 *
 * @param course from `volumeCourse`, in rising order of volume
 * @param settings charge [mL, % vol] and pressure [kPa]
 * @returns a sentence, or null where they agree within 2 K or nothing can be said
 *
 * Source: a balance of ethanol by volume at 20 °C; the 2 K are this project's choice.
 * @example
 * balanceDoubt([], defaultRunSettings) // => null
 */
export function balanceDoubt(
  course: readonly VolumePoint[],
  { charge, pressure }: Pick<RunSettings, 'charge' | 'pressure'>,
): string | null {
  const last = course.findLast(({ collectedAbv }) => collectedAbv !== null);
  if (last === undefined || last.collectedAbv === null) return null;
  const leftMl = charge.volumeMl - last.volumeMl;
  const chargedMl = (charge.volumeMl * charge.strengthAbv) / 100;
  // The most that may have come over leaves the weakest, hottest pot.
  const mostMl = (last.volumeMl * last.collectedAbv.high) / 100;
  const leftAbv = (100 * (chargedMl - mostMl)) / leftMl;
  if (leftMl <= 0 || leftAbv <= 0 || leftAbv > 95) return null;
  const potC = bubblePoint({
    ethanolMoleFraction: moleFractionFromStrength(leftAbv),
    pressureKPa: pressure.pressureKPa,
  }).temperatureC;
  if (last.headC <= potC + allowedK) return null;
  const collectedMl = (last.volumeMl * last.collectedAbv.value) / 100;
  return worded(
    'The books don’t agree with the thermometer: by the temperatures {collected} mL of the {charged} mL of ethanol charged came over, which leaves a pot that boils at {pot} °C or below, yet the head read {head} °C. The charge was weaker than stated, ethanol was lost, or the thermometer read too high.',
    {
      collected: collectedMl.toFixed(1),
      charged: chargedMl.toFixed(1),
      pot: potC.toFixed(1),
      head: last.headC.toFixed(1),
    },
  );
}
