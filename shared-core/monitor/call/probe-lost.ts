import { clockWords, worded } from '../../wording/index.ts';
import { quietAgainS } from '../sense/dropout-watch.ts';
import { probeFaultWords } from '../sense/probe-fault.ts';
import { span } from '../words/numbers.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { faultKind } from './fault-kinds.ts';
import { faultBecause } from './fault-words.ts';

/** Who has just answered for a dropout is not called for each short one that follows [s]. */
const answeredPatienceS = 20;

const act = worded(
  'Read the glass thermometer by eye; heat off and cold before you touch or open the head.',
);
const plugAct = worded('Check the plug at the computer and the cable up to the still.');
/** The prompt has room for more than the line at the top. */
const promptAct = worded('{act} {plugAct}', { act, plugAct });
/** Plug and cable are not to blame. */
const readerAct = worded(
  '{act} The program starts reading again by itself; if it does not, close it and start it again, and go on with this run.',
  { act },
);

/**
 * Dropouts that follow each other closely are one alarm: it stands again while nobody has answered it, and then until
 * the probe has been quiet. The staging waits in each of them all the same; between them the head is read, and only the
 * plug asks for anything.
 */
export const probeLost = {
  id: 'probe-lost',
  title: worded('Probe lost'),
  act,
  consequence: worded(
    'Until the head can be read the heat-off call waits, or may come late or not at all.',
  ),
  caution: 'hot-head',
  priority: 'high',
  onDelayS: 0,
  offDelayS: 5,
  asksForHeatOff: false,
  isAnsweredByHeatOff: false,
  mayBeShelved: true,
  waitsForHead: false,
  lingers: false,
  condition: ({ facts, track }) => {
    const { dropouts, faultSinceS, stage, timeS } = facts;
    if (stage === 'cool-down') return false;
    const isAnswered = track.acknowledgedS !== null;
    const isRepeated = dropouts.count > 1;
    if (faultKind(facts) !== 'gone') return isRepeated && track.active && !isAnswered;
    const mayWait = isRepeated && isAnswered && !track.active;
    return !mayWait || timeS - faultSinceS >= answeredPatienceS;
  },
  occurrence: (facts) => {
    const { dropouts, fault } = facts;
    const isRepeat = dropouts.count > 1;
    if (faultKind(facts) !== 'gone') return isRepeat ? { key: 'reads again', isRepeat } : null;
    return { key: `${fault} ${dropouts.count}`, isRepeat };
  },
  reason: (facts) => {
    const { dropouts, fault, timeS } = facts;
    const isOut = faultKind(facts) === 'gone';
    const because = isOut
      ? faultBecause(facts, worded('the probe sends nothing that can be used'))
      : worded('At {time}: readings come in again.', { time: clockWords(timeS) });
    const actWhileOut = fault === 'reader-stopped' ? readerAct : promptAct;
    const toDo = isOut ? actWhileOut : plugAct;
    if (dropouts.count < 2) {
      return { because, wouldChangeIf: worded('Good readings coming in again.'), act: toDo };
    }
    return {
      because: worded('{because} The probe has dropped out {count} times in {time}.', {
        because,
        count: dropouts.count,
        time: span(timeS - dropouts.sinceS),
      }),
      wouldChangeIf: worded(
        '{quietAgain} without a dropout; once you have answered, good readings.',
        { quietAgain: span(quietAgainS) },
      ),
      act: toDo,
    };
  },
  sentence: ({ fault }) =>
    fault === null
      ? worded('The head cannot be read.')
      : worded('The head cannot be read: {probeFault}.', { probeFault: probeFaultWords[fault] }),
  // Dropped out repeatedly and reading at present, it is told of among the prompts; the sentence tells of the run.
  speaks: (facts) => faultKind(facts) === 'gone',
} as const satisfies AlarmDefinition;
