import type { Caution } from './caution.ts';

/** What this program is not, and what goes before it. */
export const toolAndRules = [
  {
    id: 'no-safety-device',
    act: 'This program is no safety device.',
    because:
      'It advises and controls nothing; it cannot see a flame, a crack or a leak, it can be wrong, and it can fail. Watch the still: a person decides.',
    places: ['report', 'pack'],
  },
  {
    id: 'permission',
    act: 'Local rules come first.',
    because:
      'Distilling alcohol needs permission in many places, in schools too. Where the law, your school or licensed practice says otherwise, this program is wrong.',
    check: 'We may do this here',
    places: ['ferment', 'prepare', 'report'],
  },
  {
    id: 'estimate',
    act: 'Strength from the head temperature is an estimate.',
    because:
      'It is worked out for ethanol and water alone and says nothing about methanol or anything else.',
    places: ['report', 'worksheet'],
  },
] as const satisfies readonly Caution[];
