import { memo, useMemo } from 'react';
import { type StillMoment, say, stillMomentAt } from '#shared-core';
import { usePaced } from '../parts/index.ts';
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

/** Three diagrams take as long to draw as all else in view: in a fast rehearsal they are behind by so much [ms]. */
const redrawnEveryMs = 500;

function Figures({ view, understanding }: UnderstandPanelProps) {
  const { timeS, isFollowing } = understanding;
  const now = { view, timeS };
  const followed = usePaced(now, redrawnEveryMs);
  const drawn = isFollowing ? followed : now;
  // Nor are they redrawn with every reading: once a second of the run.
  const wholeS = Math.floor(drawn.timeS);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what else is in view changes with time
  const moment = useMemo(
    () => stillMomentAt(drawn.view, drawn.timeS),
    [wholeS, drawn.view.runId, drawn.view.marks, drawn.view.stages],
  );
  return (
    <>
      <CursorSlider understanding={understanding} />
      <MomentFigures moment={moment} settings={view.settings} />
    </>
  );
}

interface MomentFiguresProps {
  readonly moment: StillMoment;
  readonly settings: RunView['settings'];
}

const MomentFigures = memo(function MomentFigures({ moment, settings }: MomentFiguresProps) {
  return (
    <div className="figures">
      <BoilingFigure moment={moment} />
      <PlatesFigure moment={moment} />
      <RecoveryFigure moment={moment} settings={settings} />
    </div>
  );
});
