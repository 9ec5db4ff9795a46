import { type Mark, type Snapshot, say, stageLabels, told } from '#shared-core';
import type { RunView } from '../stores/index.ts';
import { clockWords, useWords } from '../words/index.ts';
import type { Liveness } from './liveness.ts';

interface AnnouncerProps {
  readonly view: RunView;
  readonly liveness: Liveness;
  /** Urgent prompts stand beside it, as alerts. */
  readonly hasAlerts: boolean;
}

/**
 * What a screen reader says by itself: what is to be done whenever that changes, a new stage, the last event, and that a mark was noted.
 * The sentence changes too often to be read out; it is there to be looked up. What an urgent prompt asks for is left to the prompt,
 * which is an alert: said here too, it would be heard twice.
 */
export function Announcer({ view, liveness, hasAlerts }: AnnouncerProps) {
  const words = useWords();
  const { snapshot, marks } = view;
  const event = snapshot?.events.at(-1);
  const noted = marks.findLast(isOfTheBench);
  return (
    <>
      <div className="unseen" role="status" aria-label={say('What to do')}>
        {liveness === 'live' && snapshot && !(hasAlerts && isSaidByPrompt(snapshot)) && (
          <p>
            {snapshot.act === null ? say('Keep watching the glass.') : words.said(snapshot.act)}
          </p>
        )}
      </div>
      <div className="unseen" role="status">
        {snapshot && <p>{told(stageLabels[snapshot.stage.stage])}</p>}
        {event && (
          <p>
            {say('At {raised} this was so: {because}', {
              raised: clockWords(event.timeS),
              because: words.said(event.because),
            })}
          </p>
        )}
      </div>
      <div className="unseen" role="status" aria-label={say('Noted')}>
        {noted && (
          <p>
            {say('Noted {time}: {mark}', {
              time: clockWords(noted.timeS),
              mark: words.mark(noted.mark),
            })}
          </p>
        )}
      </div>
    </>
  );
}

function isSaidByPrompt({ act, alarms }: Snapshot): boolean {
  return alarms.some((alarm) => act !== null && alarm.priority === 'high' && alarm.act === act);
}

/** Answers to a prompt are heard by the prompt going away. */
function isOfTheBench({ mark }: Mark): boolean {
  return mark.type !== 'alarm-acknowledged' && mark.type !== 'alarm-shelved';
}
