import type { Snapshot } from '#shared-core';

/** The plain sentence of the moment; the act it asks for stands first and largest. */
export function Sentence({ snapshot }: { readonly snapshot: Snapshot | null }) {
  const hasAct = snapshot !== null && snapshot.act !== null;
  return (
    <header className="sentence" data-act={hasAct}>
      {hasAct && <p className="sentence-act">{snapshot.act}</p>}
      <h1 className="sentence-words">
        {snapshot?.sentence ?? 'Waiting for the first reading of the head.'}
      </h1>
    </header>
  );
}
