import { worded } from '../wording/index.ts';
import type { Caution } from './caution.ts';

/** What this program is not, and what goes before it. */
export const toolAndRules = [
  {
    id: 'no-safety-device',
    act: worded('This program is no safety device.'),
    because: worded(
      'It advises and controls nothing; it cannot see a flame, a crack or a leak, it can be wrong, and it can fail. Watch the still: a person decides.',
    ),
    places: ['report', 'pack'],
  },
  {
    id: 'permission',
    act: worded('Local rules come first.'),
    because: worded(
      'Distilling alcohol needs permission in many places, in schools too. Where the law, your school or licensed practice says otherwise, this program is wrong.',
    ),
    check: worded('We may do this here'),
    places: ['ferment', 'prepare', 'report'],
  },
  {
    id: 'estimate',
    act: worded('Strength from the head temperature is an estimate.'),
    because: worded(
      'It is worked out for ethanol and water alone and says nothing about methanol or anything else.',
    ),
    places: ['report', 'worksheet'],
  },
] as const satisfies readonly Caution[];
