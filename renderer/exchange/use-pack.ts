import { useCallback, useState } from 'react';
import { useWindowParts } from '../window/use-stores.ts';
import { fetchPack, type PackStep } from './fetch-pack.ts';
import { saveFile } from './save-file.ts';

export interface PackMaking {
  /** Null while none is being made. */
  readonly step: PackStep | null;
  /** Name of the file that was saved last; null while one is being made. */
  readonly madeFile: string | null;
  readonly make: (runIds: readonly string[]) => Promise<void>;
}

/** Makes packs for this window, one after the other, and saves them. */
export function usePack(): PackMaking {
  const { service, bench } = useWindowParts();
  const [step, setStep] = useState<PackStep | null>(null);
  const [madeFile, setMadeFile] = useState<string | null>(null);
  const make = useCallback(
    async (runIds: readonly string[]) => {
      setMadeFile(null);
      setStep({ doing: '', share: 0 });
      const fetched = await fetchPack(service, crypto.randomUUID(), runIds, setStep);
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
  return { step, madeFile, make };
}
