import type { AlarmView } from '#shared-core';
import { mayCommand } from '../stores/index.ts';
import { useBench } from '../window/use-stores.ts';
import { Prompt } from './prompt.tsx';

interface PromptsProps {
  readonly alarms: readonly AlarmView[];
  readonly nowS: number;
  readonly isLive: boolean;
}

/** What asks for an act, most urgent and newest first; a calm column, never a pop-up. */
export function Prompts({ alarms, nowS, isLive }: PromptsProps) {
  const canAct = useBench(mayCommand) && isLive;
  const open = alarms
    .filter(({ state }) => state !== 'normal')
    .toSorted((a, b) => urgency(b) - urgency(a) || b.raisedS - a.raisedS);
  return (
    <section className="prompts" aria-label="Prompts">
      {open.length === 0 ? (
        <p className="prompts-none soft">No prompt. Nothing asks for an act.</p>
      ) : (
        <ol>
          {open.map((alarm) => (
            <li key={alarm.alarm}>
              <Prompt alarm={alarm} nowS={nowS} canAct={canAct} />
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

function urgency({ state, priority }: AlarmView): number {
  const waiting = state === 'unacknowledged' ? 4 : state === 'returned-unacknowledged' ? 1 : 0;
  const aside = state === 'shelved' ? -2 : 0;
  return waiting + aside + (priority === 'high' ? 2 : 0);
}
