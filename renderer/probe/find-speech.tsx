import { useState } from 'react';
import type { RequestAnswer } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../window/use-stores.ts';

interface FindSpeechProps {
  readonly path: string;
  readonly canAct: boolean;
}

/** Tries speeds and languages on the port the person points at, and offers what was understood. */
export function FindSpeech({ path, canAct }: FindSpeechProps) {
  const { service, bench, commands } = useWindowParts();
  const [isTrying, setTrying] = useState(false);
  const [found, setFound] = useState<RequestAnswer<'probe/find'> | null>(null);
  const find = async () => {
    setTrying(true);
    const answer = await service.request('probe/find', { path });
    setTrying(false);
    if (answer.ok) setFound(answer.value);
    else bench.getState().dispatch({ type: 'problem', problem: answer.error });
  };
  const source = found?.source ?? null;
  return (
    <div className="field">
      <Button disabled={!canAct || isTrying} onClick={() => void find()}>
        {isTrying ? 'Trying speeds and languages, up to half a minute …' : 'Find out how it speaks'}
      </Button>
      {found && <p role="status">{found.because}</p>}
      {found && found.heard.length > 0 && <code>{found.heard.slice(-3).join(' · ')}</code>}
      {source && (
        <Button weight="main" disabled={!canAct} onClick={() => void commands.connect(source)}>
          Connect like this
        </Button>
      )}
    </div>
  );
}
