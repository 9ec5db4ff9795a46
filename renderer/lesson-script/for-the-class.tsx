import { useState } from 'react';
import { type Stage, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { Say } from '../words/index.ts';
import { LessonScriptDialog } from './lesson-script-dialog.tsx';
import { scriptParts } from './script-parts.ts';
import { useLessonScript } from './use-lesson-script.ts';

/** One folded line of the script for the present stage; a window for the class never has it. */
export function ForTheClass({ stage }: { readonly stage: Stage }) {
  const canAct = useBench(mayCommand);
  const { script } = useLessonScript();
  const [isOpen, setOpen] = useState(false);
  if (!canAct) return null;
  const { show, ask, predict } = script[stage];
  const first = [ask, predict, show].find((text) => text.trim() !== '');
  return (
    <>
      <details className="why for-the-class">
        <summary>
          <span className="for-the-class-line">
            <Say
              sentence={'For the class:<span> {first}</span>'}
              parts={{
                first: first ?? say('nothing is written for this stage'),
                span: (words) => <span className="for-the-class-first">{words}</span>,
              }}
            />
          </span>
        </summary>
        <dl>
          {scriptParts.map(({ part, name }) => (
            <div key={part}>
              <dt>{name}</dt>
              <dd>{script[stage][part]}</dd>
            </div>
          ))}
        </dl>
        <Button weight="quiet" onClick={() => setOpen(true)}>
          {say('The whole script …')}
        </Button>
      </details>
      {isOpen && <LessonScriptDialog onClose={() => setOpen(false)} />}
    </>
  );
}
