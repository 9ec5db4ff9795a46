import { type AlarmView, say } from '#shared-core';
import { clockWords, durationWords } from '../words/index.ts';

/** How a prompt stands. One that waits leads on to its reason, which is that of the call whatever the head reads by now. */
export function promptStateWords(alarm: AlarmView, nowS: number): string {
  const { state, priority, raisedS, shelvedUntilS } = alarm;
  const raised = clockWords(raisedS);
  switch (state) {
    case 'unacknowledged':
      return priority === 'high'
        ? say('Act now. Called at {raised}, when this was so:', { raised })
        : say('Please act. Called at {raised}, when this was so:', { raised });
    case 'acknowledged':
      return say('Acknowledged, still so · {raised}', { raised });
    case 'returned-unacknowledged':
      return say('Called at {raised}. It is no longer so, and nobody has answered.', { raised });
    case 'shelved':
      return say('Put aside, back in {time} · {raised}', {
        time: durationWords(Math.max(0, (shelvedUntilS ?? nowS) - nowS)),
        raised,
      });
    case 'normal':
      return say('Over · {raised}', { raised });
  }
}
