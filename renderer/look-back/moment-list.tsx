import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { clockWords, signs } from '../words/index.ts';
import type { Moment } from './moments.ts';

interface MomentListProps {
  readonly moments: readonly Moment[];
  readonly timeS: number;
  readonly onJump: (moment: Moment) => void;
}

const kindSigns = {
  stage: signs.stage,
  alarm: signs.prompt,
  mark: signs.mark,
  annotation: signs.note,
} as const;
const kindNames = {
  stage: say('Stage'),
  alarm: say('Prompt'),
  mark: say('Mark'),
  annotation: say('Annotation'),
} as const;

/** Jump to a stage, a prompt, a mark or an annotation. */
export function MomentList({ moments, timeS, onJump }: MomentListProps) {
  const now = moments.findLast((moment) => moment.timeS <= timeS);
  return (
    <section aria-labelledby="moments-title">
      <h2 id="moments-title" className="moments-title">
        {say('Jump to')}
      </h2>
      <ol className="moments">
        {moments.map((moment) => (
          <li key={`${moment.kind}-${moment.timeS}-${moment.name}`}>
            <Button
              weight="quiet"
              data-kind={moment.kind}
              aria-current={moment === now}
              onClick={() => onJump(moment)}
            >
              <span className="number">{clockWords(moment.timeS)}</span>
              <span aria-hidden="true">{kindSigns[moment.kind]}</span>
              <span className="unseen">{kindNames[moment.kind]}:</span>
              <span className="moment-name">{moment.name}</span>
            </Button>
          </li>
        ))}
      </ol>
    </section>
  );
}
