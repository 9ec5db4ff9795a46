import { worded } from '../wording/index.ts';
import type { Caution } from './caution.ts';

/** Short: whoever reads them here has time, and will have none later. */
export const whenItGoesWrong = [
  {
    id: 'fire',
    act: worded('Fire on the bench: everybody out.'),
    because: worded(
      'Heat off only if your hand is clear of the fire. Blanket or extinguisher only if it is small and you are trained; else close the door and call the fire service.',
    ),
    check: worded('Extinguisher and fire blanket are within reach'),
    places: ['prepare'],
  },
  {
    id: 'pale-flame',
    act: worded('An ethanol flame is pale.'),
    because: worded('In daylight it is next to invisible. Suspect fire where you feel heat.'),
    places: [],
  },
  {
    id: 'burn',
    act: worded('Cool a burn at once.'),
    because: worded(
      'Twenty minutes under cool running water, rings and watches off, nothing pulled away that sticks to the skin; then first aid.',
    ),
    places: [],
    source: worded(
      'European Resuscitation Council, Guidelines 2021, First Aid: cooling for 20 min (from memory)',
    ),
  },
  {
    id: 'leak',
    act: worded('Ethanol spilt or smelt: no spark near it.'),
    because: worded(
      'Its vapour catches fire from afar. Heat off from where the air is clear, flames out, windows open; wipe up once everything is out.',
    ),
    places: [],
  },
] as const satisfies readonly Caution[];
