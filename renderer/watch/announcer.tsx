import { stageLabels } from '#shared-core';
import type { RunView } from '../stores/index.ts';

/**
 * What a screen reader says by itself: a new stage, and the last event. The sentence changes too
 * often to be read out; it is there to be looked up.
 */
export function Announcer({ view }: { readonly view: RunView }) {
  const { snapshot } = view;
  const event = snapshot?.events.at(-1);
  return (
    <div className="unseen" role="status">
      {snapshot && <p>{stageLabels[snapshot.stage.stage]}</p>}
      {event && <p>{event.because}</p>}
    </div>
  );
}
