import { worded } from '../wording/index.ts';
import type { Caution } from './caution.ts';

/**
 * Conditions for proving the product by burning a sample: every one of them, before a splint is lit. Ids go into the record
 * of a proof.
 */
export const proofByBurning = [
  {
    id: 'proof-allowed',
    act: worded('Only if the rules here allow it, by a teacher or a technician.'),
    because: worded('A naked flame beside distillate needs a permission of its own.'),
    places: ['proof'],
  },
  {
    id: 'proof-cold',
    act: worded('Heat off, still cold, receiver closed and away.'),
    because: worded('Nothing may burn but what is in the dish.'),
    places: ['proof'],
  },
  {
    id: 'proof-dish',
    // So little burns out within the time it is watched; common practice, no source.
    act: worded('At most 1 mL, in a dish on a heat-proof mat.'),
    because: worded('More burns higher and longer than it can be watched, and a dish can crack.'),
    places: ['proof'],
  },
  {
    id: 'proof-splint',
    act: worded('A long splint, lit away from the dish.'),
    because: worded('The vapour over the dish flares up: face, hands and sleeves stay clear.'),
    places: ['proof'],
  },
  {
    id: 'proof-screen',
    act: worded('A screen before the class, eye protection on.'),
    because: worded('A dish that cracks throws burning drops.'),
    places: ['proof'],
  },
  {
    id: 'proof-dimmed',
    act: worded('Lights dimmed.'),
    because: worded('The flame is pale: in full light nobody sees that it still burns.'),
    places: ['proof'],
  },
  {
    id: 'proof-lid',
    act: worded('A lid to smother the flame lies ready.'),
    because: worded('It ends the flame at once; blowing spreads it.'),
    places: ['proof'],
  },
  {
    id: 'proof-no-pouring',
    act: worded('Never pour onto a flame or a warm dish; never refill.'),
    because: worded('Fire runs up the stream into the bottle and out over the class.'),
    places: ['proof'],
    source: worded(
      'US Chemical Safety Board, Key Lessons for Preventing Incidents from Flammable Chemicals in Educational Demonstrations, 2014 (from memory)',
    ),
  },
] as const satisfies readonly Caution[];
