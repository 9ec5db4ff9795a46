import { useEffect, useState } from 'react';
import type { KeptWarm } from '#shared-core';
import { useWindowParts } from '../parts/index.ts';

/** The ferment that is kept warm under watch, as it stands now; null where none is. */
export function useKeptWarm(): KeptWarm | null {
  const { service } = useWindowParts();
  const [kept, setKept] = useState<KeptWarm | null>(null);
  useEffect(() => {
    let isOpen = true;
    const stop = service.on('warmth', (told) => setKept(told.kept));
    void service.request('warmth/now', {}).then((answer) => {
      if (isOpen && answer.ok) setKept(answer.value.kept);
    });
    return () => {
      isOpen = false;
      stop();
    };
  }, [service]);
  return kept;
}
