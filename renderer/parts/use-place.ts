import { useSyncExternalStore } from 'react';
import { isViewer } from '../stores/index.ts';
import { type Place, placeFromAddress, placesOf } from './place.ts';
import { useBench } from './use-stores.ts';

export function usePlaces(): readonly [Place, ...Place[]] {
  return placesOf(useBench(isViewer));
}

export function usePlace(): Place {
  const hash = useSyncExternalStore(
    (onChange) => {
      window.addEventListener('hashchange', onChange);
      return () => window.removeEventListener('hashchange', onChange);
    },
    () => window.location.hash,
  );
  return placeFromAddress(hash, usePlaces());
}
