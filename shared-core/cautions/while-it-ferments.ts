import { worded } from '../wording/index.ts';
import type { Caution } from './caution.ts';

/** The week before, while yeast works. */
export const whileItFerments = [
  {
    id: 'never-sealed',
    act: worded('Never seal a vessel that ferments.'),
    because: worded(
      'A kilogram of sugar gives hundreds of litres of gas: a closed vessel bursts. An air lock or a loose lid lets it out; see every day that it is not blocked.',
    ),
    places: ['ferment'],
  },
  {
    id: 'froth-room',
    act: worded('Leave room for froth, a quarter of the vessel at least.'),
    because: worded('Froth that climbs into the air lock blocks it, and the vessel is sealed.'),
    places: ['ferment'],
  },
  {
    id: 'gas-in-room',
    act: worded('Air the room where it ferments.'),
    because: worded(
      'Carbon dioxide is heavier than air, gathers in cellars, cupboards and low corners, and suffocates without warning.',
    ),
    places: ['ferment'],
  },
  {
    id: 'ferment-not-drunk',
    act: worded('Nothing of the ferment is tasted or drunk.'),
    because: worded(
      'It is made with laboratory vessels, and nobody knows all that has grown in it.',
    ),
    places: ['ferment'],
  },
] as const satisfies readonly Caution[];
