import { type AlarmView, mostUrgentFirst, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench, useLiveView, useWindowParts } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { clockWords, useWords } from '../words/index.ts';
import { asksForHeatOff } from './asks-for-heat-off.ts';
import { promptHeading } from './prompt-heading.ts';
import { takeHeatOff } from './take-heat-off.ts';

interface UrgentBarProps {
  /** Goes to where the prompt stands whole; null where the person is there already. */
  readonly toWatch: (() => void) | null;
}

const none: readonly AlarmView[] = [];

/** The urgent prompts of the running run that nobody has answered, for wherever Watch is out of sight. */
export function UrgentBar({ toWatch }: UrgentBarProps) {
  const { commands } = useWindowParts();
  const words = useWords();
  const canAct = useBench(mayCommand);
  const hasAdvice = useBench(({ recording }) => recording?.adviceStopped === undefined);
  const alarms = useLiveView((view) =>
    view === null || view.endedS !== null ? none : (view.snapshot?.alarms ?? none),
  );
  const waiting = hasAdvice ? alarms.filter(isUrgent).toSorted(byUrgency) : none;
  const [first] = waiting;
  if (first === undefined) return null;
  const others = waiting.length - 1;
  return (
    <div className="urgent-bar" role="alert">
      <p>
        <strong>{words.said(promptHeading(first))}</strong>{' '}
        <span className="number">
          {say('Called at {raised}', { raised: clockWords(first.raisedS) })}
          {others > 0 && say(', and {others} more', { others })}.
        </span>
      </p>
      <div className="urgent-bar-acts">
        {canAct && waiting.some(({ alarm }) => asksForHeatOff(alarm)) && (
          <Button weight="act" onClick={() => void takeHeatOff(commands, alarms)}>
            {say('Heat is off')}
          </Button>
        )}
        {toWatch && <Button onClick={toWatch}>{say('Go to Watch')}</Button>}
      </div>
    </div>
  );
}

function isUrgent({ state, priority }: AlarmView): boolean {
  return state === 'unacknowledged' && priority === 'high';
}

function byUrgency(a: AlarmView, b: AlarmView): number {
  return mostUrgentFirst.indexOf(a.alarm) - mostUrgentFirst.indexOf(b.alarm);
}
