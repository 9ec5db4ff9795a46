import { say } from '#shared-core';
import { StackingTable } from '../design/index.ts';
import type { Film } from '../replay/index.ts';
import { RunStrip } from '../strip/index.ts';
import { useWords } from '../words/index.ts';
import { sameWithinS, verdictRows } from './verdict-rows.ts';

interface WhatIfResultProps {
  readonly recorded: Film;
  readonly supposed: Film;
  /** What was supposed to be different, in words. */
  readonly changed: readonly string[];
}

/** The record and the supposition side by side; the supposition can never be taken for what happened. */
export function WhatIfResult({ recorded, supposed, changed }: WhatIfResultProps) {
  const words = useWords();
  const rows = verdictRows(recorded.verdicts, supposed.verdicts);
  const differences = rows.filter(({ isDifferent }) => isDifferent).length;
  return (
    <>
      <p className="what-if-sentence" role="status">
        {differences === 0
          ? say('Nothing would have been called differently.')
          : say(
              'With another {changed}, {differences} of {all} calls would have been different (marked ≠; up to {seconds} s apart is the same call).',
              { changed: joined(changed), differences, all: rows.length, seconds: sameWithinS },
            )}
      </p>
      <div className="what-if-strips">
        <StripOf film={recorded} title={say('As recorded')} />
        <StripOf film={supposed} title={say('What if: this did not happen')} isSupposed />
      </div>
      <StackingTable
        name={say('Record and what-if')}
        corner={say('Call')}
        columns={[
          { key: 'recorded', title: say('As recorded'), label: say('As recorded') },
          { key: 'supposed', title: say('What if'), label: say('What if') },
        ]}
        rows={rows.map(({ name, recorded: before, supposed: after, isDifferent }) => ({
          name,
          cells: [before, isDifferent ? `≠ ${after}` : after],
          different: isDifferent ? [1] : [],
        }))}
      />
      <dl className="what-if-reasons">
        <div>
          <dt>{say('As recorded')}</dt>
          <dd>{words.said(recorded.verdicts.verdict.because)}</dd>
        </div>
        <div>
          <dt>{say('What if')}</dt>
          <dd>{words.said(supposed.verdicts.verdict.because)}</dd>
        </div>
      </dl>
    </>
  );
}

interface StripOfProps {
  readonly film: Film;
  readonly title: string;
  readonly isSupposed?: boolean;
}

function StripOf({ film, title, isSupposed = false }: StripOfProps) {
  const view = film.frames[film.frames.length - 1];
  if (view === undefined) return null;
  return (
    <section className="what-if-strip" data-supposed={isSupposed} aria-label={title}>
      <h2>{title}</h2>
      {/* All of it is gone through: nothing lasts, and nothing is foreseen any more. */}
      <RunStrip view={{ ...view, endedS: film.endS }} hasControls={false} />
    </section>
  );
}

function joined(parts: readonly string[]): string {
  const [last, ...before] = parts.toReversed();
  if (last === undefined) return say('supposition');
  if (before.length === 0) return last;
  return say('{some} and {last}', { some: before.toReversed().join(', '), last });
}
