import { say } from '#shared-core';
import { pressureFromDraft } from '../draft/index.ts';
import { useBench, usePrepare } from '../parts/index.ts';
import { signs, useWords } from '../words/index.ts';
import { isAssumedIn } from './assumed-in-step.ts';
import { looksLeft, safetyLooks } from './safety-checks.ts';
import { goToStep, type StepId, stepIds, stepTitles, toDoIn } from './steps.ts';
import { useHeadAsWatched } from './use-head-as-watched.ts';
import { useStepInView } from './use-step-in-view.ts';
import { useToDo } from './use-to-do.ts';

/** Where one is among the four steps, what is done in each, and what is not. */
export function StepBar() {
  const here = useStepInView();
  const toDo = useToDo();
  const done = useDoneWords();
  const draft = usePrepare((state) => state.draft);
  const looksToDo = usePrepare((state) => looksLeft(state.draft.confirms).length);
  return (
    <nav className="step-bar" aria-label={say('Steps of preparing')}>
      <ol>
        {stepIds.map((step, index) => {
          const left = toDoIn(step, toDo).length;
          // A run may begin on what is only assumed, so nothing is to do; done it is not.
          const isDone = left === 0 && !isAssumedIn(step, draft);
          return (
            <li key={step}>
              <button
                type="button"
                aria-current={step === here ? 'step' : undefined}
                data-done={isDone}
                onClick={() => goToStep(step)}
              >
                <span className="step-name">
                  {index + 1}. {stepTitles[step]}
                </span>{' '}
                <span className="step-state">
                  <span aria-hidden="true">{isDone ? signs.done : signs.toDo}</span>{' '}
                  <span className="step-gist">
                    {left === 0 ? done[step] : leftWords(step, left, looksToDo)}
                  </span>
                </span>
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}

function leftWords(step: StepId, left: number, looksToDo: number): string {
  return step === 'checks'
    ? say('{count, plural, one {# look to do} other {# looks to do}}', { count: looksToDo })
    : say('{left} to do', { left });
}

/** What each step has brought, once nothing is left to do in it. */
function useDoneWords(): Readonly<Record<StepId, string>> {
  const words = useWords();
  const probe = useBench((bench) => bench.probe);
  const head = probe?.latest.find(({ channel }) => channel === 'head');
  const asWatched = useHeadAsWatched(probe);
  const draft = usePrepare((state) => state.draft);
  const pressure = pressureFromDraft(draft);
  const heard = head
    ? say('heard, {quantity}', {
        quantity: words.quantity(asWatched(head) ?? head.value, 1, head.unit),
      })
    : say('heard');
  const charge = say('{chargeVolume} mL of {chargeStrength} % vol', {
    chargeVolume: draft.chargeVolumeMl.trim(),
    chargeStrength: draft.chargeStrengthAbv.trim(),
  });
  return {
    probe: isAssumedIn('probe', draft) ? say('{heard}, its kind assumed', { heard }) : heard,
    pot: isAssumedIn('pot', draft) ? say('{charge}, assumed', { charge }) : charge,
    air: !pressure.ok
      ? ''
      : pressure.value.setting.source === 'assumed'
        ? say('not known')
        : words.quantity(pressure.value.setting.pressureKPa, 1, 'kPa'),
    checks: say('all {count} looks', { count: safetyLooks.length }),
  };
}
