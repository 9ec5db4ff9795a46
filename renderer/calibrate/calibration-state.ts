import { assertNever } from '#shared-core';
import type { SettledReading } from './settling.ts';

export type Point = 'ice' | 'steam';

/** The walk through the two points: what was taken so far, and with which device. */
export interface CalibrationState {
  readonly ice: SettledReading | null;
  readonly steam: SettledReading | null;
  readonly device: string | null;
}

export type CalibrationEvent =
  | {
      readonly type: 'taken';
      readonly point: Point;
      readonly settled: SettledReading;
      readonly device: string | null;
    }
  | { readonly type: 'forgotten'; readonly point: Point };

export const nothingTaken: CalibrationState = { ice: null, steam: null, device: null };

/** What was taken with the device that is heard; with none heard, all of it. */
export function takenWith(state: CalibrationState, device: string | null): CalibrationState {
  return device === null || state.device === null || state.device === device ? state : nothingTaken;
}

export function calibrationAfter(
  state: CalibrationState,
  event: CalibrationEvent,
): CalibrationState {
  switch (event.type) {
    case 'taken': {
      const { device } = event;
      return { ...takenWith(state, device), [event.point]: event.settled, device };
    }
    case 'forgotten':
      return { ...state, [event.point]: null };
    default:
      return assertNever(event);
  }
}
