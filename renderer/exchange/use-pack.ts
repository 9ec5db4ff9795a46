import { useCallback, useState } from 'react';
import { useWindowParts } from '../parts/index.ts';
import { fetchPack, type PackStep, type WantedPack } from './fetch-pack.ts';
import { saveFile } from './save-file.ts';

export interface PackMaking {
  /** Null while none is being made. */
  readonly step: PackStep | null;
  /** Name of the file that was saved last; null while one is being made. */
  readonly madeFile: string | null;
  readonly make: (runIds: readonly string[]) => Promise<void>;
  readonly makeFerments: (fermentIds: readonly string[]) => Promise<void>;
  /** The files of one run as they are. */
  readonly makeFiles: (runId: string) => Promise<void>;
}

/** Makes packs for this window, one after the other, and saves them. */
export function usePack(): PackMaking {
  const { service, bench } = useWindowParts();
  const [step, setStep] = useState<PackStep | null>(null);
  const [madeFile, setMadeFile] = useState<string | null>(null);
  const fetch = useCallback(
    async (wanted: WantedPack) => {
      setMadeFile(null);
      setStep({ doing: '', share: 0 });
      const fetched = await fetchPack(service, crypto.randomUUID(), wanted, setStep);
      setStep(null);
      if (!fetched.ok) {
        bench.getState().dispatch({ type: 'problem', problem: fetched.error });
        return;
      }
      saveFile(fetched.value.fileName, fetched.value.content);
      setMadeFile(fetched.value.fileName);
    },
    [service, bench],
  );
  const make = useCallback((runIds: readonly string[]) => fetch({ runIds }), [fetch]);
  const makeFerments = useCallback(
    (fermentIds: readonly string[]) => fetch({ fermentIds }),
    [fetch],
  );
  const makeFiles = useCallback((filesOf: string) => fetch({ filesOf }), [fetch]);
  return { step, madeFile, make, makeFerments, makeFiles };
}
