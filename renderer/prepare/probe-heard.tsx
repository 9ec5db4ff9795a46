import { assertNever, type ProbeStatus, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { HeadQuestion, isSimulated, LeftOutNote, ProbeSpeech } from '../probe/index.ts';
import { channelWords, problemWords, Say, useWords } from '../words/index.ts';
import { ProbeNotBack } from './probe-not-back.tsx';
import { useHeadAsWatched } from './use-head-as-watched.ts';

interface ProbeHeardProps {
  readonly probe: ProbeStatus | null;
  readonly canAct: boolean;
}

/** What comes down the line right now: the quickest proof that the right probe is in the right place. */
export function ProbeHeard({ probe, canAct }: ProbeHeardProps) {
  const { commands } = useWindowParts();
  const words = useWords();
  const asWatched = useHeadAsWatched(probe);
  if (probe?.notBack) return <ProbeNotBack notBack={probe.notBack} canAct={canAct} />;
  if (probe === null || probe.state === 'none') return null;
  const { state, path, identity, latest, lastLine, rejectedLines, advice, problem } = probe;
  return (
    <div className="heard field-wide" data-state={state}>
      <p className="heard-state">
        {isSimulated(probe) ? say('Simulated still, for a rehearsal: no probe') : stateWords(state)}
        {path && <span className="soft"> · {path}</span>}
        {identity && <span className="soft"> · {identity}</span>}
      </p>
      {latest.length > 0 && (
        <ul className="heard-readings">
          {latest.map((reading) => {
            const { channel, value, unit } = reading;
            const sent = words.quantity(value, 2, unit);
            const watchedC = asWatched(reading);
            return (
              <li key={channel}>
                <span className="soft">{channelWords(channel)}</span>{' '}
                <strong className="number">
                  {watchedC === null ? sent : words.quantity(watchedC, 2, unit)}
                </strong>
                {watchedC !== null && (
                  <span className="soft number">
                    {' '}
                    {say('calibrated; the probe sends {sent}', { sent })}
                  </span>
                )}
              </li>
            );
          })}
        </ul>
      )}
      {lastLine && (
        <p className="small">
          <Say
            sentence={'Last line: <code>{lastLine}</code>'}
            parts={{ lastLine, code: (words) => <code>{words}</code> }}
          />
          {rejectedLines > 0 && (
            <span className="soft">
              {' '}
              {say('· {count, plural, one {{count} line} other {{count} lines}} not understood', {
                count: rejectedLines,
              })}
            </span>
          )}
        </p>
      )}
      <HeadQuestion probe={probe} canAct={canAct} />
      <LeftOutNote probe={probe} />
      {(problem || advice) && (
        <p role="status">{problem ? problemWords(problem) : words.said(advice ?? '')}</p>
      )}
      <ProbeSpeech probe={probe} canAct={canAct} />
      <Button weight="quiet" disabled={!canAct} onClick={() => void commands.disconnect()}>
        {probe.source?.kind === 'several'
          ? say('Let go of all of them')
          : isSimulated(probe)
            ? say('Let go of the simulated still')
            : say('Let go of this port')}
      </Button>
    </div>
  );
}

function stateWords(state: Exclude<ProbeStatus['state'], 'none'>): string {
  switch (state) {
    case 'starting':
      return say('Starting the serial reader …');
    case 'connecting':
      return say('Opening the port …');
    case 'hearing':
      return say('Heard clearly');
    case 'silent':
      return say('Connected, but silent');
    case 'lost':
      return say('The probe is gone');
    case 'unreadable':
      return say('Something is heard, but not understood');
    default:
      return assertNever(state);
  }
}
