import { useEffect, useState } from 'react';
import { type ProbeStatus, type RequestAnswer, say, told } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { Say } from '../words/index.ts';
import { probesOf } from './probes-of-source.ts';

interface FindSpeechProps {
  readonly probe: ProbeStatus | null;
  readonly canAct: boolean;
}

type Finding = RequestAnswer<'probe/find'>;

/** What is being tried, or came of it. */
interface Trial {
  readonly path: string;
  readonly found: Finding | null;
}

/**
 * Tries speeds and languages on the port the person points at, and offers what was understood. The port
 * is let go of for it, so that nothing is connected meanwhile: this stays until something is again.
 */
export function FindSpeech({ probe, canAct }: FindSpeechProps) {
  const { commands } = useWindowParts();
  const [trial, setTrial] = useState<Trial | null>(null);
  const isConnected = probe !== null && probe.state !== 'none';
  const isTrying = trial !== null && trial.found === null;
  useEffect(() => {
    if (isConnected) setTrial((known) => (known?.found ? null : known));
  }, [isConnected]);

  const path = trial?.path ?? pathInDoubt(probe);
  if (path === null) return null;
  const find = async () => {
    setTrial({ path, found: null });
    const found = await commands.ask('probe/find', { path });
    setTrial(found && { path, found });
  };
  const source = trial?.found?.source ?? null;
  return (
    <div className="heard heard-finding field-wide">
      {trial?.found && <FindingWords finding={trial.found} />}
      {isTrying && (
        <p role="status">
          {say('Trying speeds and languages on {path}, up to half a minute …', { path })}
        </p>
      )}
      <div className="choices">
        {source && (
          <Button weight="main" disabled={!canAct} onClick={() => void commands.connect(source)}>
            {say('Connect like this')}
          </Button>
        )}
        <Button disabled={!canAct || isTrying} onClick={() => void find()}>
          {trial?.found ? say('Try again') : say('Find out how it speaks')}
        </Button>
      </div>
    </div>
  );
}

function FindingWords({ finding: { because, heard } }: { readonly finding: Finding }) {
  return (
    <>
      <p role="status">{told(because)}</p>
      {heard.length > 0 && (
        <p className="small">
          <Say
            sentence={'Heard: <code>{slice}</code>'}
            parts={{ slice: heard.slice(-3).join(' · '), code: (words) => <code>{words}</code> }}
          />
        </p>
      )}
    </>
  );
}

/** The one port that is open and makes no sense; a port that is gone has nothing to try. */
function pathInDoubt(probe: ProbeStatus | null): string | null {
  if (probe?.state !== 'silent' && probe?.state !== 'unreadable') return null;
  const [only, ...others] = probesOf(probe.source);
  return only !== undefined && others.length === 0 ? only.path : null;
}
