import { type ProbeStatus, type Reading, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { channelWords, useWords } from '../words/index.ts';
import { hasHead } from './probe-facts.ts';
import { probesOf } from './probes-of-source.ts';
import { withHead } from './with-head.ts';

interface HeadQuestionProps {
  readonly probe: ProbeStatus;
  readonly canAct: boolean;
}

/** Numbers that are heard but don't say where they hang: the person who hung them there says it, by looking at them. */
export function HeadQuestion({ probe, canAct }: HeadQuestionProps) {
  const { commands } = useWindowParts();
  const words = useWords();
  const { state, source, latest, origins } = probe;
  if (source === null || source.kind === 'demo' || hasHead(probe)) return null;
  // Of several probes one that is silent must not keep the others from being asked about.
  if (state !== 'hearing' && source.kind === 'serial') return null;
  const choices = latest.filter(mayBeHead).flatMap((reading) => {
    const chosen = withHead(source, reading.channel, origins);
    return chosen === null ? [] : [{ ...reading, chosen }];
  });
  if (choices.length === 0) return null;
  const portOf = (shown: string) => {
    const origin = origins?.find(({ channel }) => channel === shown);
    return probesOf(source).length > 1 ? probesOf(source)[origin?.probe ?? 0]?.path : undefined;
  };
  return (
    <fieldset className="head-question">
      <legend className="field-name">{say('Which one hangs in the still head?')}</legend>
      <p>{say('Before any heat, warm its tip in your hand: it is the one that rises.')}</p>
      <div className="choices">
        {choices.map(({ channel, value, unit, chosen }) => (
          <Button key={channel} disabled={!canAct} onClick={() => void commands.connect(chosen)}>
            {channelWords(channel)}{' '}
            <strong className="number">{words.quantity(value, 2, unit === '1' ? '' : unit)}</strong>
            {portOf(channel) && <span className="soft"> · {portOf(channel)}</span>}
          </Button>
        ))}
      </div>
    </fieldset>
  );
}

/** A balance hangs in no still head; a number without a unit may be anything. */
function mayBeHead({ unit }: Reading): boolean {
  return unit === '°C' || unit === '1';
}
