import type { ProbeStatus } from '#shared-core';
import { FindSpeech } from './find-speech.tsx';
import { SpeechForm } from './speech-form.tsx';

interface ProbeSpeechProps {
  readonly probe: ProbeStatus;
  readonly canAct: boolean;
}

/** Help with a probe that is not understood; put away while it is. */
export function ProbeSpeech({ probe, canAct }: ProbeSpeechProps) {
  const { source, state } = probe;
  if (source?.kind !== 'serial') return null;
  const isUnderstood = state === 'hearing' || state === 'connecting';
  return (
    <>
      {!isUnderstood && <FindSpeech path={source.path} canAct={canAct} />}
      <details className="why">
        <summary>How this probe speaks</summary>
        <SpeechForm key={JSON.stringify(source)} source={source} probe={probe} canAct={canAct} />
      </details>
    </>
  );
}
