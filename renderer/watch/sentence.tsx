import type { Snapshot } from '#shared-core';
import { useWords } from '../words/use-words.ts';

/** The plain sentence of the moment; the act it asks for stands first and largest. */
export function Sentence({ snapshot }: { readonly snapshot: Snapshot | null }) {
  const words = useWords();
  const act = snapshot?.act ?? null;
  return (
    <header className="sentence" data-tone={toneOf(snapshot)}>
      {act !== null && <p className="sentence-act">{words.said(act)}</p>}
      <h1 className="sentence-words">
        {words.said(snapshot?.sentence ?? 'Waiting for the first reading of the head.')}
      </h1>
    </header>
  );
}

/** Urgent only where a high alarm is open: an asked-for check must not look like a fire. */
function toneOf(snapshot: Snapshot | null): 'calm' | 'advice' | 'urgent' {
  if (!snapshot || snapshot.act === null) return 'calm';
  const isUrgent = snapshot.alarms.some(
    ({ priority, state }) =>
      priority === 'high' && (state === 'unacknowledged' || state === 'acknowledged'),
  );
  return isUrgent ? 'urgent' : 'advice';
}
