import { useId } from 'react';
import { say } from '#shared-core';
import { usePrepare } from '../parts/index.ts';

interface BellFieldProps {
  /** What that bell means for the run; null while it can't be said. */
  readonly verdict: string | null;
}

/** When the lesson ends, as the teacher says, and whether the run does before. */
export function BellField({ verdict }: BellFieldProps) {
  const bell = usePrepare((state) => state.draft.bell);
  const change = usePrepare((state) => state.change);
  const id = useId();
  return (
    <div className="bell-field">
      <label htmlFor={id}>{say('The bell rings at')}</label>
      <input
        id={id}
        className="entry"
        type="time"
        value={bell}
        onChange={({ target }) => change({ bell: target.value })}
      />
      {bell !== '' && (
        <p className="small" role="status">
          {verdict ?? say('Whether it fits can’t be told yet.')}
        </p>
      )}
    </div>
  );
}
