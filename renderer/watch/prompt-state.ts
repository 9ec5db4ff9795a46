import type { AlarmView } from '#shared-core';
import { clockWords, durationWords } from '../words/index.ts';

/** How a prompt stands. One that waits leads on to its reason, which is that of the call whatever the head reads by now. */
export function promptStateWords(alarm: AlarmView, nowS: number): string {
  const { state, priority, raisedS, shelvedUntilS } = alarm;
  const raised = clockWords(raisedS);
  switch (state) {
    case 'unacknowledged':
      return `${priority === 'high' ? 'Act now' : 'Please act'}. Called at ${raised}, when this was so:`;
    case 'acknowledged':
      return `Acknowledged, still so · ${raised}`;
    case 'returned-unacknowledged':
      return `Over, not acknowledged · ${raised}`;
    case 'shelved':
      return `Put aside, back in ${durationWords(Math.max(0, (shelvedUntilS ?? nowS) - nowS))} · ${raised}`;
    case 'normal':
      return `Over · ${raised}`;
  }
}
