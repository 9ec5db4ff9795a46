import { useId } from 'react';
import { SelectField } from '../design/index.ts';
import { counted } from '../words/index.ts';
import type { LookFor } from './matching-runs.ts';

interface FindRunsProps {
  readonly lookFor: LookFor;
  readonly found: number;
  readonly all: number;
  readonly onLookFor: (lookFor: LookFor) => void;
}

const filters = [
  { value: 'all', label: 'All runs' },
  { value: 'recorded', label: 'Recorded here' },
  { value: 'imported', label: 'Imported' },
  { value: 'rehearsal', label: 'Rehearsals' },
] as const;

/** Finds runs in a long library by a word of their name, their notes or their date. */
export function FindRuns({ lookFor, found, all, onLookFor }: FindRunsProps) {
  const id = useId();
  return (
    <search className="find-runs">
      <div className="field">
        <label className="field-name" htmlFor={id}>
          Find a run
        </label>
        <input
          id={id}
          className="entry"
          type="search"
          autoComplete="off"
          value={lookFor.text}
          onChange={({ target }) => onLookFor({ ...lookFor, text: target.value })}
        />
      </div>
      <SelectField
        name="Show"
        options={filters}
        value={lookFor.filter}
        onValue={(filter) => onLookFor({ ...lookFor, filter })}
      />
      <p className="small soft number" role="status">
        {found === all ? counted(all, 'run') : `${found} of ${counted(all, 'run')}`}
      </p>
    </search>
  );
}
