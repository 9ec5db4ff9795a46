import { type ProbeStatus, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { AnotherProbe } from './another-probe.tsx';
import { mostProbes, probesOf, type SerialChoice, sourceOf } from './probes-of-source.ts';
import { SpeechForm } from './speech-form.tsx';

interface ProbeSpeechProps {
  readonly probe: ProbeStatus;
  readonly canAct: boolean;
}

/** Help with probes that are not understood, and a place for more of them; put away while all is well. */
export function ProbeSpeech({ probe, canAct }: ProbeSpeechProps) {
  const { commands } = useWindowParts();
  const probes = probesOf(probe.source);
  if (probes.length === 0) return null;
  const hasOthers = probes.length > 1;
  const listen = (wanted: readonly SerialChoice[]) => {
    const source = sourceOf(wanted);
    void (source === null ? commands.disconnect() : commands.connect(source));
  };
  return (
    <>
      {probes.map((source, index) => (
        <details key={source.path} className="why">
          <summary>
            {hasOthers
              ? say('How {path} speaks', { path: source.path })
              : say('How this probe speaks')}
          </summary>
          <SpeechForm
            key={JSON.stringify(source)}
            source={source}
            probe={probe}
            hasOthers={hasOthers}
            canAct={canAct}
            onSource={(spoken) => listen(probes.with(index, spoken))}
          />
          {hasOthers && (
            <Button
              weight="quiet"
              disabled={!canAct}
              onClick={() => listen(probes.filter((other) => other !== source))}
            >
              {say('Let go of {path}', { path: source.path })}
            </Button>
          )}
        </details>
      ))}
      {probes.length < mostProbes && (
        <AnotherProbe
          usedPaths={probes.map(({ path }) => path)}
          canAct={canAct}
          onProbe={(more) => listen([...probes, more])}
        />
      )}
    </>
  );
}
