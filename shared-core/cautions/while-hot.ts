import type { Caution } from './caution.ts';

/** From the first heat until the glass is cold. */
export const whileHot = [
  {
    id: 'attended',
    act: 'Never leave a heated still alone.',
    because:
      'What boils over, slips off or catches fire needs a hand at once. Somebody who knows the apparatus stays; whoever must leave takes the heat off first.',
    check: 'Somebody stays at the still from first heat to cold pot',
    places: ['prepare', 'prompt'],
  },
  {
    id: 'dryness',
    act: 'Never boil the pot dry.',
    because:
      'A pot boiled dry can crack, and its residue can char or catch fire. Heat off while liquid stands well above the bottom.',
    places: ['prompt'],
  },
  {
    id: 'hot-head',
    act: 'Hands off a hot head.',
    because:
      'Vapour and hot glass burn. Heat off and cold before anybody touches or opens the head; until then read the glass thermometer by eye.',
    places: ['prompt'],
  },
  {
    id: 'hot-glass',
    act: 'Glass and mantle stay hot.',
    because: 'Long after the heat is off. Let them cool before you touch or open anything.',
    places: ['debrief'],
  },
  {
    id: 'steam',
    act: 'Steam burns.',
    because:
      'To check a probe in it, clamp the probe while the water is cold, keep hands away while it boils, and take it out when all is cold again.',
    places: ['calibrate'],
  },
] as const satisfies readonly Caution[];
