import { assertNever, settledReading } from '#shared-core';

type TimedTemperature = Parameters<typeof settledReading>[0][number];
/** A bath that has settled, or why it has not. */
export type Settling = ReturnType<typeof settledReading>;
export type SettledReading = Extract<Settling, { ok: true }>['value'];

export type Point = 'ice' | 'steam';

/** The walk through the two points: what the probe says lately, and what was taken so far. */
export interface CalibrationState {
  readonly lately: readonly TimedTemperature[];
  readonly ice: SettledReading | null;
  readonly steam: SettledReading | null;
}

export type CalibrationEvent =
  | { readonly type: 'heard'; readonly reading: TimedTemperature }
  | { readonly type: 'taken'; readonly point: Point }
  | { readonly type: 'forgotten'; readonly point: Point };

/** A bath is judged by this much of what was heard last. */
const windowS = 45;
/** Digital probes step by 1/16 K, many meters by 0.1 K: the coarser of the two. */
export const resolutionK = 0.1;

export const nothingTaken: CalibrationState = { lately: [], ice: null, steam: null };

export function calibrationAfter(
  state: CalibrationState,
  event: CalibrationEvent,
): CalibrationState {
  switch (event.type) {
    case 'heard':
      return { ...state, lately: withReading(state.lately, event.reading) };
    case 'taken': {
      const settled = settledReading(state.lately, resolutionK);
      return settled.ok ? { ...state, [event.point]: settled.value } : state;
    }
    case 'forgotten':
      return { ...state, [event.point]: null };
    default:
      return assertNever(event);
  }
}

/** A probe that was plugged in anew counts its time anew; older readings are then of another bath. */
function withReading(
  lately: readonly TimedTemperature[],
  reading: TimedTemperature,
): readonly TimedTemperature[] {
  const last = lately.at(-1);
  if (last && reading.timeS === last.timeS) return lately;
  if (last && reading.timeS < last.timeS) return [reading];
  return [...lately.filter(({ timeS }) => timeS > reading.timeS - windowS), reading];
}
