import { type ProbeStatus, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { problemWords } from '../words/index.ts';

interface ProbeNotBackProps {
  readonly notBack: NonNullable<ProbeStatus['notBack']>;
  readonly canAct: boolean;
}

/** A rehearsal took the probe's place and could not give it back: why, and one press to try again. */
export function ProbeNotBack({ notBack: { source, problem }, canAct }: ProbeNotBackProps) {
  const { commands } = useWindowParts();
  return (
    <div className="heard field-wide" data-state="lost">
      <p className="heard-state">
        {say('The probe from before the rehearsal is not connected again')}
      </p>
      <p role="status">{problemWords(problem)}</p>
      <Button disabled={!canAct} onClick={() => void commands.connect(source)}>
        {say('Connect it again')}
      </Button>
    </div>
  );
}
