/** Places are named for what people do there. */
export type Place = 'prepare' | 'watch' | 'look-back';

export const placeNames: Readonly<Record<Place, string>> = {
  prepare: 'Prepare',
  watch: 'Watch',
  'look-back': 'Look back',
};

/** The places of a window; one that only watches has nothing to prepare. The first is where it opens. */
export function placesOf(isViewer: boolean): readonly [Place, ...Place[]] {
  return isViewer ? ['watch', 'look-back'] : ['prepare', 'watch', 'look-back'];
}

/** The place in the address, so that back and forward buttons work; the first when it names none. */
export function placeFromAddress(hash: string, places: readonly [Place, ...Place[]]): Place {
  return places.find((place) => hash === `#${place}`) ?? places[0];
}

export function goTo(place: Place): void {
  window.location.hash = place;
}
