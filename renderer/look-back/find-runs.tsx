import { say } from '#shared-core';
import { SelectField, TextLine } from '../design/index.ts';
import type { LookFor } from './matching-runs.ts';

interface FindRunsProps {
  readonly lookFor: LookFor;
  readonly found: number;
  readonly all: number;
  readonly onLookFor: (lookFor: LookFor) => void;
}

const filters = [
  { value: 'all', label: say('All runs') },
  { value: 'recorded', label: say('Recorded here') },
  { value: 'imported', label: say('Imported') },
  { value: 'rehearsal', label: say('Rehearsals') },
] as const;

/** Finds runs in a long library by a word of their name, their notes or their date. */
export function FindRuns({ lookFor, found, all, onLookFor }: FindRunsProps) {
  return (
    <search className="find-runs">
      <TextLine
        name={say('Find a run')}
        type="search"
        text={lookFor.text}
        onText={(text) => onLookFor({ ...lookFor, text })}
      />
      <SelectField
        name={say('Show')}
        options={filters}
        value={lookFor.filter}
        onValue={(filter) => onLookFor({ ...lookFor, filter })}
      />
      <p className="small soft number" role="status">
        {found === all
          ? say('{count, plural, one {# run} other {# runs}}', { count: all })
          : say('{found} of {all, plural, one {# run} other {# runs}}', { found, all })}
      </p>
    </search>
  );
}
