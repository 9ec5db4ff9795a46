import { worded } from '../wording/index.ts';
import type { Caution } from './caution.ts';

/** From the first heat until the glass is cold. */
export const whileHot = [
  {
    id: 'attended',
    act: worded('Never leave a heated still alone.'),
    because: worded(
      'What boils over, slips off or catches fire needs a hand at once. Somebody who knows the apparatus stays; whoever must leave takes the heat off first.',
    ),
    check: worded('Somebody stays at the still from first heat to cold pot'),
    places: ['prepare', 'prompt'],
  },
  {
    id: 'dryness',
    act: worded('Never boil the pot dry.'),
    because: worded(
      'A pot boiled dry can crack, and its residue can char or catch fire. Heat off while liquid stands well above the bottom.',
    ),
    places: ['prompt'],
  },
  {
    id: 'hot-head',
    act: worded('Hands off a hot head.'),
    because: worded(
      'Vapour and hot glass burn. Heat off and cold before anybody touches or opens the head.',
    ),
    places: ['prompt'],
  },
  {
    id: 'hot-glass',
    act: worded('Glass and mantle stay hot.'),
    because: worded('Long after the heat is off. Let them cool before you touch or open anything.'),
    places: ['calibrate', 'debrief'],
  },
  {
    id: 'steam',
    act: worded('Steam burns.'),
    because: worded(
      'To check a probe in it, clamp the probe while the water is cold, keep hands away while it boils, and take it out when all is cold again.',
    ),
    places: ['calibrate'],
  },
] as const satisfies readonly Caution[];
