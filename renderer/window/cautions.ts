/** What can hurt people, reachable from every place. Common practice in teaching laboratories, no source. */
export const cautions: readonly { readonly act: string; readonly reason: string }[] = [
  {
    act: 'This program is no safety device.',
    reason: 'It advises. It controls nothing, it can be wrong, and it can fail. Watch the still.',
  },
  {
    act: 'Local rules come first.',
    reason: 'Where the law or your school says otherwise, this program is wrong.',
  },
  {
    act: 'Never leave a heated still alone.',
    reason: 'Not for a minute, not with the prompts on.',
  },
  {
    act: 'Never close the rig.',
    reason:
      'The way from the pot to the air stays open, or pressure builds until the glass breaks.',
  },
  {
    act: 'No flame, no spark.',
    reason:
      'Ethanol vapour is heavier than air, creeps along the bench and catches fire from afar.',
  },
  {
    act: 'The flame is pale.',
    reason: 'In daylight next to invisible. Suspect fire where you feel heat.',
  },
  {
    act: 'Cooling water first, heat second.',
    reason: 'If the water stops, heat off at once: warm vapour leaves the condenser.',
  },
  {
    act: 'Never boil the pot dry.',
    reason: 'Heat off while liquid still covers the bottom.',
  },
  {
    act: 'Glass and mantle stay hot.',
    reason: 'Long after the heat is off. Let them cool before you touch or open anything.',
  },
  {
    act: 'Nobody drinks it.',
    reason:
      'Distillate from laboratory glass is a chemical. The first fraction holds the most volatile, most harmful part.',
  },
  {
    act: 'Fire on the bench: everybody out.',
    reason:
      'Heat off only if your hand is clear of the fire. Blanket or extinguisher only if it is small and you are trained; else close the door and call the fire service.',
  },
];
