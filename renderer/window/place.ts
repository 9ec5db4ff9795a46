import { useSyncExternalStore } from 'react';

/** Places are named for what people do there. */
export type Place = 'prepare' | 'watch' | 'look-back';

export const placeNames: Readonly<Record<Place, string>> = {
  prepare: 'Prepare',
  watch: 'Watch',
  'look-back': 'Look back',
};

const places = Object.keys(placeNames) as Place[];

/** The place in the address, so that back and forward buttons work; Prepare when it names none. */
export function placeFromAddress(hash: string): Place {
  return places.find((place) => hash === `#${place}`) ?? 'prepare';
}

export function goTo(place: Place): void {
  window.location.hash = place;
}

export function usePlace(): Place {
  return useSyncExternalStore(
    (onChange) => {
      window.addEventListener('hashchange', onChange);
      return () => window.removeEventListener('hashchange', onChange);
    },
    () => placeFromAddress(window.location.hash),
  );
}
