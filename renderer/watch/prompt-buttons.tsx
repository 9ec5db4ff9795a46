import {
  type Alarm,
  type AlarmView,
  alarmCatalogue,
  contractLimits,
  type MarkBody,
  say,
} from '#shared-core';
import { Button } from '../design/index.ts';
import type { Commands } from '../parts/index.ts';
import { durationWords } from '../words/index.ts';
import { asksForHeatOff } from './asks-for-heat-off.ts';
import { promptHeading } from './prompt-heading.ts';

/** The button says how long, from the number that is sent. */
const notYet = say('Not for {time}', { time: durationWords(contractLimits.promptAsideS) });

interface PromptButtonsProps {
  readonly alarm: AlarmView;
  /** What the same press answers too. */
  readonly also: AlarmView | null;
  readonly commands: Commands;
}

export function PromptButtons({ alarm: view, also, commands }: PromptButtonsProps) {
  const { alarm, state } = view;
  const act = promptHeading(view);
  const asked = also === null ? [alarm] : [alarm, also.alarm];
  const answer = async (reply: (asked: Alarm) => Promise<boolean>) => {
    for (const one of asked) await reply(one);
  };
  if (state !== 'unacknowledged' && state !== 'returned-unacknowledged') return null;
  const mayWait = asked.every((one) => alarmCatalogue[one].mayBeShelved);
  const hasHeatOff = state === 'unacknowledged' && asksForHeatOff(alarm);
  // Doing what was asked answers the prompt: nobody has to press twice.
  const did = async (mark: MarkBody) => {
    if (await commands.mark(mark)) await answer(commands.acknowledge);
  };
  return (
    <div className="prompt-buttons">
      {hasHeatOff && (
        <Button
          weight="act"
          aria-label={say('Heat is off: {act}', { act })}
          onClick={() => void did({ type: 'heat-off' })}
        >
          {say('Heat is off')}
        </Button>
      )}
      {alarm === 'attention' && state === 'unacknowledged' ? (
        <Button weight="act" onClick={() => void did({ type: 'attention-answered' })}>
          {say('I am at the still')}
        </Button>
      ) : (
        <Button
          weight={state === 'unacknowledged' && !hasHeatOff ? 'act' : 'plain'}
          aria-label={say('Acknowledge: {act}', { act })}
          onClick={() => void answer(commands.acknowledge)}
        >
          {say('Acknowledge')}
        </Button>
      )}
      {state === 'unacknowledged' && mayWait && (
        <Button aria-label={`${notYet}: ${act}`} onClick={() => void answer(commands.putAside)}>
          {notYet}
        </Button>
      )}
    </div>
  );
}
