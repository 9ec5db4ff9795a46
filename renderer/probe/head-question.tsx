import type { ProbeStatus } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../window/use-stores.ts';
import { useWords } from '../words/use-words.ts';
import { hasHead } from './probe-facts.ts';
import { withHead } from './with-head.ts';

interface HeadQuestionProps {
  readonly probe: ProbeStatus;
  readonly canAct: boolean;
}

/** Numbers that are heard but don't say where they hang: the person who hung them there says it, by looking at them. */
export function HeadQuestion({ probe, canAct }: HeadQuestionProps) {
  const { commands } = useWindowParts();
  const words = useWords();
  const { state, source, latest } = probe;
  if (state !== 'hearing' || source === null || source.kind === 'demo' || hasHead(probe)) {
    return null;
  }
  if (source.kind === 'several') {
    return (
      <p role="status">
        None of these probes is said to hang in the still head. Say so under “How … speaks”.
      </p>
    );
  }
  return (
    <fieldset className="head-question">
      <legend className="field-name">Which one hangs in the still head?</legend>
      <p>Before any heat, warm its tip in your hand: it is the one that rises.</p>
      <div className="choices">
        {latest.map(({ channel, value, unit }) => (
          <Button
            key={channel}
            disabled={!canAct}
            onClick={() => void commands.connect(withHead(source, channel))}
          >
            {channel}{' '}
            <strong className="number">{words.quantity(value, 2, unit === '1' ? '' : unit)}</strong>
          </Button>
        ))}
      </div>
    </fieldset>
  );
}
