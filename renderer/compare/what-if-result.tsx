import { StackingTable } from '../design/index.ts';
import type { Film } from '../replay/index.ts';
import { RunStrip } from '../strip/index.ts';
import { verdictRows } from './verdict-rows.ts';

interface WhatIfResultProps {
  readonly recorded: Film;
  readonly supposed: Film;
  /** What was supposed to be different, in words. */
  readonly changed: readonly string[];
}

/** The record and the supposition side by side; the supposition can never be taken for what happened. */
export function WhatIfResult({ recorded, supposed, changed }: WhatIfResultProps) {
  const rows = verdictRows(recorded.verdicts, supposed.verdicts);
  const differences = rows.filter(({ isDifferent }) => isDifferent).length;
  return (
    <>
      <p className="what-if-sentence" role="status">
        {differences === 0
          ? 'Nothing would have been called differently.'
          : `With another ${joined(changed)}, ${differences} of ${rows.length} calls would have been different (marked ≠).`}
      </p>
      <div className="what-if-strips">
        <StripOf film={recorded} title="As recorded" />
        <StripOf film={supposed} title="What if: this did not happen" isSupposed />
      </div>
      <StackingTable
        name="Record and what-if"
        corner="Call"
        columns={[
          { key: 'recorded', title: 'As recorded', label: 'As recorded' },
          { key: 'supposed', title: 'What if', label: 'What if' },
        ]}
        rows={rows.map(({ name, recorded: before, supposed: after, isDifferent }) => ({
          name,
          cells: [before, isDifferent ? `≠ ${after}` : after],
          different: isDifferent ? [1] : [],
        }))}
      />
      <dl className="what-if-reasons">
        <div>
          <dt>As recorded</dt>
          <dd>{recorded.verdicts.verdict.because}</dd>
        </div>
        <div>
          <dt>What if</dt>
          <dd>{supposed.verdicts.verdict.because}</dd>
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
      <RunStrip view={view} hasControls={false} />
    </section>
  );
}

function joined(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? 'supposition';
  return `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`;
}
