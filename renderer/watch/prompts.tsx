import { type AlarmView, mostUrgentFirst, say } from '#shared-core';
import { useBench } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { FoldedPrompt } from './folded-prompt.tsx';
import { Prompt } from './prompt.tsx';

interface PromptsProps {
  readonly alarms: readonly AlarmView[];
  readonly nowS: number;
  readonly isLive: boolean;
  /** Nothing is recorded any more: what was over before that asks nobody for anything. */
  readonly isOver?: boolean;
  /** Nothing else on the page asks for anything either, and it is known to be so. */
  readonly isCalm: boolean;
}

/**
 * What asks for an act, in a calm column, never a pop-up: the first thing to do in full, so that it needs no scrolling, and
 * a line for each that can wait for it.
 */
export function Prompts({ alarms, nowS, isLive, isOver = false, isCalm }: PromptsProps) {
  const canAct = useBench(mayCommand) && isLive;
  const standing = alarms
    .filter(({ state }) => state !== 'normal' && !(isOver && state === 'returned-unacknowledged'))
    .toSorted(byUrgency);
  const [first] = standing;
  const also = first ? saidWith(first, standing) : null;
  const others = standing.slice(1).filter((alarm) => alarm !== also);
  if (first === undefined && !isCalm) return null;
  return (
    <section className="prompts" aria-label={say('Prompts')}>
      {first === undefined ? (
        <p className="prompts-none soft">{say('Keep watching the glass.')}</p>
      ) : (
        <ol>
          <li key={first.alarm}>
            <Prompt alarm={first} also={also} nowS={nowS} canAct={canAct} />
          </li>
          {others.map((alarm) => (
            <li key={alarm.alarm}>
              {alarm.state === 'unacknowledged' ? (
                <FoldedPrompt alarm={alarm} nowS={nowS} canAct={canAct} />
              ) : (
                <Prompt alarm={alarm} also={null} nowS={nowS} canAct={canAct} />
              )}
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

/** That the limit is passed asks for nothing that the end of the plateau did not: both are one prompt. */
function saidWith(first: AlarmView, standing: readonly AlarmView[]): AlarmView | null {
  if (first.alarm !== 'plateau-departure') return null;
  const isSo = ({ alarm, state }: AlarmView) => alarm === 'over-limit' && state === first.state;
  return standing.find(isSo) ?? null;
}

function byUrgency(a: AlarmView, b: AlarmView): number {
  const rank = ({ alarm }: AlarmView) => mostUrgentFirst.indexOf(alarm);
  return urgency(b) - urgency(a) || rank(a) - rank(b);
}

function urgency({ state, priority }: AlarmView): number {
  const waiting = state === 'unacknowledged' ? 4 : state === 'returned-unacknowledged' ? 1 : 0;
  const aside = state === 'shelved' ? -2 : 0;
  return waiting + aside + (priority === 'high' ? 2 : 0);
}
