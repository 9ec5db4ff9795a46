import { useCallback, useState } from 'react';
import { useWindowParts } from '../window/use-stores.ts';
import { fetchPack, type PackStep } from './fetch-pack.ts';
import { saveFile } from './save-file.ts';

export interface PackMaking {
  /** Null while none is being made. */
  readonly step: PackStep | null;
  readonly make: (runIds: readonly string[]) => Promise<void>;
}

/** Makes packs for this window, one after the other, and saves them. */
export function usePack(): PackMaking {
  const { service, bench } = useWindowParts();
  const [step, setStep] = useState<PackStep | null>(null);
  const make = useCallback(
    async (runIds: readonly string[]) => {
      setStep({ doing: '', share: 0 });
      const fetched = await fetchPack(service, crypto.randomUUID(), runIds, setStep);
      setStep(null);
      if (fetched.ok) saveFile(fetched.value.fileName, fetched.value.content);
      else bench.getState().dispatch({ type: 'problem', problem: fetched.error });
    },
    [service, bench],
  );
  return { step, make };
}
