import { useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import type { Film } from '../replay/index.ts';
import { RunRemarks } from '../words/index.ts';
import { useWhatIf } from './use-what-if.ts';
import { changeAsRecorded, changedParts, type WhatIfChange } from './what-if-change.ts';
import { WhatIfForm } from './what-if-form.tsx';
import { WhatIfResult } from './what-if-result.tsx';

interface WhatIfProps {
  readonly film: Film;
  readonly summary: RunSummary;
  readonly onClose: () => void;
}

/** The same readings under another pressure, limit or column: what would the program have said? */
export function WhatIf({ film, summary, onClose }: WhatIfProps) {
  const [change, setChange] = useState<WhatIfChange | null>(null);
  const progress = useWhatIf(film, change);
  const recorded = changeAsRecorded(film.settings);
  return (
    <main className="place what-if" id="place">
      <div className="compare-head">
        <h1>{say('What if …')}</h1>
        <Button onClick={onClose}>{say('Back to the library')}</Button>
      </div>
      <p className="place-lead">
        {say(
          '“{name}”: the same readings and marks, gone through again under other suppositions. The record itself stays as it is.',
          { name: film.identity.name },
        )}
      </p>
      <RunRemarks run={summary} />
      <WhatIfForm recorded={recorded} onChange={setChange} />
      {progress.step === 'computing' && (
        <p role="status">
          {say('Going through the run again …')}
          <br />
          <progress value={progress.done} max={1} aria-label={say('How far')} />
        </p>
      )}
      {progress.step === 'ready' && change && (
        <WhatIfResult
          recorded={film}
          supposed={progress.film}
          changed={changedParts(recorded, change)}
        />
      )}
    </main>
  );
}
