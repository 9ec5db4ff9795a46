import { say, stageLabels, stages, told } from '#shared-core';
import { Button, stageLooks } from '../design/index.ts';
import { fullScreenIfAllowed } from './full-screen.ts';

/** The lines of the strip, each drawn as there. */
const lines = [
  { look: 'strip-trace', name: say('the head, as measured') },
  { look: 'fan-line', name: say('what is expected') },
  { look: 'band-edge', name: say('where the head may hold') },
  { look: 'mark-line', name: say('what somebody did') },
] as const;

const shown = stages.filter((stage) => stage !== 'cool-down');

/** What the class's screen shows before a run: the largest and the smallest letters and every line that the run will be drawn with. */
export function TestCard({ onClose }: { readonly onClose: () => void }) {
  return (
    <main className="classroom test-card" id="place">
      <div className="test-card-top">
        <h1 className="sentence-words">{say('The run has not begun')}</h1>
        <p className="head-value" aria-hidden="true">
          0–9
        </p>
      </div>
      <p>{say('Whoever reads this line from the back row will read everything.')}</p>
      <ul className="test-card-lines" aria-label={say('Lines of the run')}>
        {lines.map(({ look, name }) => (
          <li key={look}>
            <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
              <path d="M0 5H100" className={look} />
            </svg>
            {name}
          </li>
        ))}
      </ul>
      <ol className="test-card-stages" aria-label={say('What comes over, in order')}>
        {shown.map((stage) => (
          <li key={stage}>
            <svg aria-hidden="true">
              <rect width="100%" height="100%" fill={stageLooks[stage].colour} />
              <rect
                width="100%"
                height="100%"
                fill={`url(#${stageLooks[stage].texture})`}
                fillOpacity={0.35}
              />
            </svg>
            {told(stageLabels[stage])}
          </li>
        ))}
      </ol>
      <div className="classroom-foot">
        <p>{say('The run is shown here as soon as it begins.')}</p>
        <Button onClick={fullScreenIfAllowed}>{say('Full screen')}</Button>
        <Button onClick={onClose}>{say('Leave')}</Button>
      </div>
    </main>
  );
}
