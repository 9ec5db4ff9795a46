import { assertNever } from '#shared-core';
import type { SettledReading } from './settling.ts';

export type Point = 'ice' | 'steam';

/** The walk through the two points: what was taken so far. */
export interface CalibrationState {
  readonly ice: SettledReading | null;
  readonly steam: SettledReading | null;
}

export type CalibrationEvent =
  | { readonly type: 'taken'; readonly point: Point; readonly settled: SettledReading }
  | { readonly type: 'forgotten'; readonly point: Point };

export const nothingTaken: CalibrationState = { ice: null, steam: null };

export function calibrationAfter(
  state: CalibrationState,
  event: CalibrationEvent,
): CalibrationState {
  switch (event.type) {
    case 'taken':
      return { ...state, [event.point]: event.settled };
    case 'forgotten':
      return { ...state, [event.point]: null };
    default:
      return assertNever(event);
  }
}
