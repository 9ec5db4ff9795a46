import { Button } from '../design/index.ts';
import { problemWords } from '../words/index.ts';
import { useBench, useWindowParts } from './use-stores.ts';

/** What could not be done, until it has been read. */
export function ProblemNote() {
  const { bench } = useWindowParts();
  const problem = useBench((state) => state.problem);
  if (problem === null) return null;
  return (
    <div className="problem-note" role="status">
      <p>{problemWords(problem)}</p>
      <Button onClick={() => bench.getState().dispatch({ type: 'problem-read' })}>
        Understood
      </Button>
    </div>
  );
}
