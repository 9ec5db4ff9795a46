import { expect, test } from 'vitest';
import { cautions } from '../../../renderer/window/cautions.ts';

test('every way people can be hurt is among the cautions', () => {
  const all = cautions.map(({ act, reason }) => `${act} ${reason}`).join('\n');
  for (const word of [
    /no safety device/,
    /Local rules come first/,
    /Never leave a heated still alone/,
    /vapour is heavier than air/,
    /flame is pale/,
    /Never close the rig/,
    /Never boil the pot dry/,
    /stay hot/,
    /Nobody drinks it/,
    /Cooling water first/,
    /call the fire service/,
  ]) {
    expect(all).toMatch(word);
  }
});
