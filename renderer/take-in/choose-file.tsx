import { useId } from 'react';
import { say } from '#shared-core';
import { useBench } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';

interface ChooseFileProps {
  /** Unfolded where there is no run yet. */
  readonly isFirst: boolean;
  readonly onFile: (file: File) => void;
}

/** Picks the file of any logger. */
export function ChooseFile({ isFirst, onFile }: ChooseFileProps) {
  const canAct = useBench(mayCommand);
  const id = useId();
  return (
    <details className="why choose-file" open={isFirst}>
      <summary>{say('Take in the table of another logger')}</summary>
      <div className="choose-file-field">
        <label className="field-name" htmlFor={id}>
          {say('Take in a CSV of time and head temperature')}
        </label>
        <input
          id={id}
          type="file"
          accept=".csv,.txt,.tsv,.dat,text/csv,text/plain"
          disabled={!canAct}
          onChange={({ target }) => {
            const file = target.files?.[0];
            if (file) onFile(file);
            target.value = '';
          }}
        />
        <p className="small soft">
          {say('You see its first lines and say which column holds what.')}
        </p>
      </div>
    </details>
  );
}
