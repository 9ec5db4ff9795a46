import { useEffect, useState } from 'react';
import type { KeptWarm } from '#shared-core';
import { useAsked, useWindowParts } from '../parts/index.ts';

/** The ferment that is kept warm under watch, as it stands now; null where none is. */
export function useKeptWarm(): KeptWarm | null {
  const { service } = useWindowParts();
  const [kept, setKept] = useState<KeptWarm | null>(null);
  useEffect(() => service.on('warmth', (told) => setKept(told.kept)), [service]);
  useAsked('warmth/now', {}, (answer) => answer.ok && setKept(answer.value.kept));
  return kept;
}
