export interface SafetyCheck {
  readonly check: string;
  readonly words: string;
  readonly reason: string;
}

/** What must be true at the bench before heat. Common practice in teaching laboratories, no source. */
export const safetyChecks: readonly SafetyCheck[] = [
  {
    check: 'permission',
    words: 'We may do this here',
    reason:
      'Distilling alcohol needs permission in many places, in schools too. The rules here are known and met.',
  },
  {
    check: 'open-path',
    words: 'The way from pot to air is open',
    reason: 'A closed rig builds pressure and can burst. Vent or receiver adapter is open.',
  },
  {
    check: 'boiling-stones',
    words: 'Boiling stones are in the cold pot',
    reason: 'Added to a hot liquid they make it boil over.',
  },
  {
    check: 'cooling-water',
    words: 'Cooling water runs: in at the bottom, out at the top',
    reason: 'Without it, flammable vapour leaves the rig.',
  },
  {
    check: 'receiver-away',
    words: 'The receiver stands away from the heat, no flame in the room',
    reason: 'The distillate burns. Heat with a mantle or a bath, never with a flame.',
  },
  {
    check: 'eyes-and-extinguisher',
    words: 'Eye protection is on; extinguisher and fire blanket are at hand',
    reason: 'For everybody near the bench.',
  },
  {
    check: 'attended',
    words: 'Somebody stays at the still from first heat to cold pot',
    reason: 'This program advises. It controls nothing and replaces nobody.',
  },
];
