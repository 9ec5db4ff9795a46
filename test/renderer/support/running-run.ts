import { type AlarmView, createMonitor, defaultRunSettings, type EventBody } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';
import { runOpened } from './opened-run.ts';

export const recording: EventBody<'recording'> = {
  state: 'recording',
  runId: 'r1',
  startedAtIso: '2026-01-01T09:00:00.000Z',
  savedToS: 1,
  problem: null,
};

export const heatOffPrompt: AlarmView = {
  alarm: 'plateau-departure',
  state: 'unacknowledged',
  priority: 'high',
  raisedS: 3268,
  act: 'Take the heat off and change the receiver.',
  because: 'The head is at 83.2 °C.',
  consequence: 'Water dilutes the product.',
  wouldChangeIf: 'The head falls back.',
  shelvedUntilS: null,
};

/** A window at the bench, with a run under way and these prompts standing. */
export function runUnderWay(
  { bench, live, preferences }: WindowParts,
  alarms: readonly AlarmView[] = [],
  status: EventBody<'recording'> = recording,
  welcomed = true,
): void {
  preferences.getState().set({ welcomed });
  const { dispatch } = bench.getState();
  dispatch({ type: 'connection', connection: 'open' });
  dispatch({
    type: 'app',
    app: {
      version: '1',
      modelVersion: '1',
      shell: 'loopback',
      platform: 'linux',
      runsFolder: '/runs',
      mayCommand: true,
      secondScreen: { by: 'address', address: 'http://127.0.0.1/#token=viewer' },
    },
  });
  dispatch({ type: 'recording', recording: status });
  const snapshot = plainSnapshot(createMonitor(defaultRunSettings).advanceTo(4000));
  const { dispatch: tell } = live.getState();
  tell(runOpened);
  tell({ type: 'snapshot', runId: 'r1', snapshot: { ...snapshot, alarms: [...alarms] } });
}
