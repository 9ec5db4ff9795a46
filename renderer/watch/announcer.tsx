import { type Mark, stageLabels } from '#shared-core';
import type { RunView } from '../stores/index.ts';
import { clockWords, useWords } from '../words/index.ts';
import type { Liveness } from './liveness.ts';

interface AnnouncerProps {
  readonly view: RunView;
  readonly liveness: Liveness;
}

/**
 * What a screen reader says by itself: what is to be done whenever that changes, a new stage, the last event, and that a mark was noted.
 * The sentence changes too often to be read out; it is there to be looked up.
 */
export function Announcer({ view, liveness }: AnnouncerProps) {
  const words = useWords();
  const { snapshot, marks } = view;
  const event = snapshot?.events.at(-1);
  const noted = marks.findLast(isOfTheBench);
  return (
    <>
      <div className="unseen" role="status" aria-label="What to do">
        {liveness === 'live' && snapshot && (
          <p>{snapshot.act === null ? 'Nothing to do now.' : words.said(snapshot.act)}</p>
        )}
      </div>
      <div className="unseen" role="status">
        {snapshot && <p>{stageLabels[snapshot.stage.stage]}</p>}
        {event && <p>{event.because}</p>}
      </div>
      <div className="unseen" role="status" aria-label="Noted">
        {noted && (
          <p>
            Noted {clockWords(noted.timeS)}: {words.mark(noted.mark)}
          </p>
        )}
      </div>
    </>
  );
}

/** Answers to a prompt are heard by the prompt going away. */
function isOfTheBench({ mark }: Mark): boolean {
  return mark.type !== 'alarm-acknowledged' && mark.type !== 'alarm-shelved';
}
