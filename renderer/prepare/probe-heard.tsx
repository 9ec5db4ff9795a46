import { assertNever, type ProbeStatus } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { HeadQuestion, isSimulated, LeftOutNote, ProbeSpeech } from '../probe/index.ts';
import { channelWords, counted, problemWords, useWords } from '../words/index.ts';

interface ProbeHeardProps {
  readonly probe: ProbeStatus | null;
  readonly canAct: boolean;
}

/** What comes down the line right now: the quickest proof that the right probe is in the right place. */
export function ProbeHeard({ probe, canAct }: ProbeHeardProps) {
  const { commands } = useWindowParts();
  const words = useWords();
  if (probe === null || probe.state === 'none') return null;
  const { state, path, identity, latest, lastLine, rejectedLines, advice, problem } = probe;
  return (
    <div className="heard field-wide" data-state={state}>
      <p className="heard-state">
        {isSimulated(probe) ? 'Simulated still, for a rehearsal: no probe' : stateWords(state)}
        {path && <span className="soft"> · {path}</span>}
        {identity && <span className="soft"> · {identity}</span>}
      </p>
      {latest.length > 0 && (
        <ul className="heard-readings">
          {latest.map(({ channel, value, unit }) => (
            <li key={channel}>
              <span className="soft">{channelWords(channel)}</span>{' '}
              <strong className="number">{words.quantity(value, 2, unit)}</strong>
            </li>
          ))}
        </ul>
      )}
      {lastLine && (
        <p className="small">
          Last line: <code>{lastLine}</code>
          {rejectedLines > 0 && (
            <span className="soft"> · {counted(rejectedLines, 'line')} not understood</span>
          )}
        </p>
      )}
      <HeadQuestion probe={probe} canAct={canAct} />
      <LeftOutNote probe={probe} />
      {(problem || advice) && <p role="status">{problem ? problemWords(problem) : advice}</p>}
      <ProbeSpeech probe={probe} canAct={canAct} />
      <Button weight="quiet" disabled={!canAct} onClick={() => void commands.disconnect()}>
        {probe.source?.kind === 'several'
          ? 'Let go of all of them'
          : isSimulated(probe)
            ? 'Let go of the simulated still'
            : 'Let go of this port'}
      </Button>
    </div>
  );
}

function stateWords(state: Exclude<ProbeStatus['state'], 'none'>): string {
  switch (state) {
    case 'starting':
      return 'Starting the serial reader …';
    case 'connecting':
      return 'Opening the port …';
    case 'hearing':
      return 'Heard clearly';
    case 'silent':
      return 'Connected, but silent';
    case 'lost':
      return 'The probe is gone';
    case 'unreadable':
      return 'Something is heard, but not understood';
    default:
      return assertNever(state);
  }
}
