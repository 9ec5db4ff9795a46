import type { ReactNode } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import {
  goToStep,
  type StepId,
  stepAfter,
  stepElementId,
  stepHeadingId,
  stepIds,
  stepTitles,
  toDoIn,
} from './steps.ts';
import { ToDoList } from './to-do-list.tsx';
import { useToDo } from './use-to-do.ts';

interface PrepareStepProps {
  readonly step: StepId;
  readonly lead: string;
  readonly children: ReactNode;
}

/**
 * One of the four steps, a screen of its own. All of them stay on the sheet: going back costs nothing, and whoever knows what to
 * enter scrolls instead of pressing.
 */
export function PrepareStep({ step, lead, children }: PrepareStepProps) {
  const missing = toDoIn(step, useToDo());
  const next = stepAfter(step);
  const title = stepTitles[step];
  return (
    <section
      className="prepare-step"
      id={stepElementId(step)}
      aria-labelledby={stepHeadingId(step)}
    >
      <div className="step-heading">
        <h2 id={stepHeadingId(step)} tabIndex={-1}>
          {stepIds.indexOf(step) + 1}. {title}
        </h2>
        <p className="soft">{lead}</p>
      </div>
      {children}
      {next && (
        <div className="step-foot">
          <Button onClick={() => goToStep(next)}>
            {say('Next: {title}', { title: stepTitles[next] })}
          </Button>
          {missing.length > 0 && (
            <ToDoList name={say('Still to do under “{title}”', { title })} toDo={missing} />
          )}
        </div>
      )}
    </section>
  );
}
