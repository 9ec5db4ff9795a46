import { say } from '#shared-core';

/** Places are named for what people do there. */
export type Place = 'prepare' | 'watch' | 'look-back';

export const placeNames: Readonly<Record<Place, string>> = {
  prepare: say('Prepare'),
  watch: say('Watch'),
  'look-back': say('Look back'),
};

/** The places of a window; one that only watches has nothing to prepare, a pupil's own no library. The first is where it opens. */
export function placesOf(isViewer: boolean, isOnlooker = false): readonly [Place, ...Place[]] {
  if (isOnlooker) return ['watch'];
  return isViewer ? ['watch', 'look-back'] : ['prepare', 'watch', 'look-back'];
}

/** The place in the address, so that back and forward buttons work; the first when it names none. */
export function placeFromAddress(hash: string, places: readonly [Place, ...Place[]]): Place {
  return places.find((place) => hash === `#${place}`) ?? places[0];
}

export function goTo(place: Place): void {
  window.location.hash = place;
}
