import { useCallback, useEffect, useState } from 'react';
import type { RunSummary, ServiceProblem } from '#shared-core';
import { useBench, useWindowParts } from '../parts/index.ts';

export interface Library {
  readonly runs: readonly RunSummary[] | null;
  readonly problem: ServiceProblem | null;
  readonly reload: () => void;
}

/** The runs on this computer; read again when a run starts or ends. */
export function useLibrary(): Library {
  const { service } = useWindowParts();
  const state = useBench((bench) => bench.recording?.state);
  const connection = useBench((bench) => bench.connection);
  const [runs, setRuns] = useState<readonly RunSummary[] | null>(null);
  const [problem, setProblem] = useState<ServiceProblem | null>(null);
  const reload = useCallback(() => {
    void service.request('runs/list', {}).then((answer) => {
      if (answer.ok) setRuns(answer.value.runs);
      setProblem(answer.ok ? null : answer.error);
    });
  }, [service]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a run that ends changes the library
  useEffect(reload, [reload, state, connection]);
  return { runs, problem, reload };
}
