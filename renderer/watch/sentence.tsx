import { type Snapshot, say } from '#shared-core';
import { clockWords, useWords } from '../words/index.ts';
import type { Liveness } from './liveness.ts';

interface SentenceProps {
  readonly snapshot: Snapshot | null;
  readonly liveness: Liveness;
  readonly endedS: number | null;
}

interface Said {
  readonly act: string | null;
  readonly sentence: string;
  readonly tone: 'calm' | 'advice' | 'urgent';
}

/** The plain sentence of the moment; the act it asks for stands first and largest. */
export function Sentence(props: SentenceProps) {
  const words = useWords();
  const { act, sentence, tone } = whatToSay(props);
  return (
    <header className="sentence" data-tone={tone}>
      {act !== null && <p className="sentence-act">{words.said(act)}</p>}
      <h1 className="sentence-words">{words.said(sentence)}</h1>
    </header>
  );
}

function whatToSay({ snapshot, liveness, endedS }: SentenceProps): Said {
  if (liveness === 'cut-off') {
    return {
      act: say('Go by the thermometer in the still head.'),
      sentence: say('This window has lost its connection and shows what it heard last.'),
      tone: 'urgent',
    };
  }
  if (liveness === 'unjudged') {
    return {
      act: say('Go by the thermometer in the still head.'),
      sentence: say('The temperature is what the probe sends; nobody judges it here.'),
      tone: 'urgent',
    };
  }
  if (liveness === 'ended' && endedS !== null) {
    return {
      act: null,
      sentence: say('This run ended at {ended}. Nothing is watched any more.', {
        ended: clockWords(endedS),
      }),
      tone: 'calm',
    };
  }
  if (snapshot === null) {
    return { act: null, sentence: say('Waiting for the first reading of the head.'), tone: 'calm' };
  }
  return { act: snapshot.act, sentence: snapshot.sentence, tone: toneOf(snapshot) };
}

/** Urgent only where a high alarm is open: an asked-for check must not look like a fire. */
function toneOf({ act, alarms }: Snapshot): Said['tone'] {
  if (act === null) return 'calm';
  const isUrgent = alarms.some(
    ({ priority, state }) =>
      priority === 'high' && (state === 'unacknowledged' || state === 'acknowledged'),
  );
  return isUrgent ? 'urgent' : 'advice';
}
