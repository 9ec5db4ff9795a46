import { worded } from '../wording/index.ts';
import type { Caution } from './caution.ts';

/** About what comes over, and what stays behind. */
export const whatIsCollected = [
  {
    id: 'drink',
    act: worded('Nobody drinks any of it.'),
    because: worded(
      'Methanol comes over in every fraction, no temperature shows it, and no cut takes it away. Nothing that comes out of this rig becomes drinkable.',
    ),
    places: ['report', 'worksheet', 'pack', 'debrief'],
    source: worded(
      'this project’s simulator of a pear ferment, where most of the methanol comes in the main fraction',
    ),
  },
  {
    id: 'label',
    act: worded('Label what is collected and store it closed.'),
    because: worded(
      'On the label: what it is, how strong, since when, and that it burns. Locked up, away from heat.',
    ),
    places: ['report', 'debrief'],
  },
  {
    id: 'disposal',
    act: worded('Dispose of distillate and residue as your rules say, once they are cold.'),
    because: worded('Ethanol burns in a drain too, and cloths wet with it burn in a bin.'),
    places: ['report', 'debrief'],
  },
] as const satisfies readonly Caution[];
