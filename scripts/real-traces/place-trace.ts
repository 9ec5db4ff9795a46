import { type RunInput, readReadingsCsv } from '#shared-core';

/** A head temperature that a real column gave, second by second, as it would have begun at a still. */
export interface PlacedTrace {
  readonly inputs: readonly RunInput[];
  /** The head of each reading that was measured, not made up [s], [°C]. */
  readonly measured: readonly { readonly timeS: number; readonly headC: number }[];
}

/** A plateau's level is that of the lowest five minutes [s]. */
const levelForS = 300;
/** Vapour arrives after so long and is given until the trace begins to settle [s]. */
const arrivalS = 780;
const warmUpS = 900;
/** In the made-up warm-up the bulb follows the vapour with such a time constant [s], from room temperature [°C]. */
const arrivalTimeConstantS = 15;
const roomC = 21;

/**
 * A series in a CSV file, shifted so that its lowest five minutes are the plateau of the bench it is set on [°C], behind a warm-up
 * that is made up: a trace of another mixture tells of noise, wander and bends, not of physics. Null where there is no head in it for five
 * minutes.
 */
export function placeTrace(text: string, plateauC: number): PlacedTrace | null {
  const read = readReadingsCsv(text);
  if (!read.ok) return null;
  const heads = read.value.inputs.flatMap((input) =>
    input.kind === 'reading' && input.channel === 'head' && input.quality === 'good'
      ? [{ timeS: input.timeS, headC: input.value }]
      : [],
  );
  const [first] = heads;
  const levelC = lowestMeanC(heads);
  if (first === undefined || levelC === null) return null;
  const shiftK = plateauC - levelC;
  const measured = heads.map(({ timeS, headC }) => ({
    timeS: warmUpS + timeS - first.timeS,
    headC: headC + shiftK,
  }));
  const warmUp = Array.from({ length: warmUpS }, (_, timeS) => {
    const risen = timeS < arrivalS ? 0 : -Math.expm1(-(timeS - arrivalS) / arrivalTimeConstantS);
    const rawC = roomC - shiftK + (first.headC - roomC + shiftK) * risen;
    return { timeS, headC: Math.round(10 * rawC) / 10 + shiftK };
  });
  return { measured, inputs: [...warmUp, ...measured].map(readingOf) };
}

function readingOf({ timeS, headC }: PlacedTrace['measured'][number]): RunInput {
  return { kind: 'reading', timeS, channel: 'head', value: headC, unit: '°C', quality: 'good' };
}

/** The lowest mean of five minutes in a row [°C]. */
function lowestMeanC(heads: PlacedTrace['measured']): number | null {
  let lowest: number | null = null;
  let sum = 0;
  let from = 0;
  heads.forEach(({ timeS, headC }, to) => {
    sum += headC;
    while (timeS - (heads[from]?.timeS ?? 0) >= levelForS) {
      const meanC = sum / (to - from + 1);
      lowest = Math.min(lowest ?? meanC, meanC);
      sum -= heads[from]?.headC ?? 0;
      from += 1;
    }
  });
  return lowest;
}
