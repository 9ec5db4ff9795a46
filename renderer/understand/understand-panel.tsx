import { useMemo } from 'react';
import { say, stillMomentAt } from '#shared-core';
import type { RunView } from '../stores/index.ts';
import { BoilingFigure } from './boiling-figure.tsx';
import { CursorSlider } from './cursor-slider.tsx';
import { PlatesFigure } from './plates-figure.tsx';
import { RecoveryFigure } from './recovery-figure.tsx';
import type { Understanding } from './use-understanding.ts';

interface UnderstandPanelProps {
  readonly view: RunView;
  readonly understanding: Understanding;
}

/** What goes on in pot, column and head at the cursor: three diagrams, each with its sentence. */
export function UnderstandPanel({ view, understanding }: UnderstandPanelProps) {
  const { isOpen, setOpen } = understanding;
  return (
    <section className="understand" aria-label={say('Understand')} data-open={isOpen}>
      <button
        type="button"
        className="understand-toggle"
        aria-expanded={isOpen}
        onClick={() => setOpen(!isOpen)}
      >
        {say('Understand this moment')}
      </button>
      {isOpen && <Figures view={view} understanding={understanding} />}
    </section>
  );
}

function Figures({ view, understanding }: UnderstandPanelProps) {
  // The diagrams are redrawn once a second of the run, not with every reading.
  const wholeS = Math.floor(understanding.timeS);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what else is in view changes with time
  const moment = useMemo(
    () => stillMomentAt(view, understanding.timeS),
    [wholeS, view.runId, view.marks, view.stages],
  );
  return (
    <>
      <CursorSlider understanding={understanding} />
      <div className="figures">
        <BoilingFigure moment={moment} />
        <PlatesFigure moment={moment} />
        <RecoveryFigure moment={moment} settings={view.settings} />
      </div>
    </>
  );
}
