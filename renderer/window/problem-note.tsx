import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench, usePlace, useWindowParts } from '../parts/index.ts';
import { isAboutProbe } from '../stores/index.ts';
import { problemWords } from '../words/index.ts';

/** What could not be done, until it has been read. */
export function ProblemNote() {
  const { bench } = useWindowParts();
  const problem = useBench((state) => state.problem);
  const isInPrepare = usePlace() === 'prepare';
  // There it stands where the probe is chosen.
  if (problem === null || (isInPrepare && isAboutProbe(problem))) return null;
  return (
    <div className="problem-note" role="status">
      <p>{problemWords(problem)}</p>
      <Button onClick={() => bench.getState().dispatch({ type: 'problem-read' })}>
        {say('Understood')}
      </Button>
    </div>
  );
}
