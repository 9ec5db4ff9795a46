import { afterEach, expect, test } from 'vitest';
import { setLanguage } from '../../../shared-core/wording/language.ts';
import { sayParts } from '../../../shared-core/wording/say.ts';

afterEach(() => setLanguage('en'));

test('parts that are no text stand where the language wants them, with the words that are marked up', () => {
  const strong = (words: unknown[]) => ({ strong: words });
  const said = () =>
    sayParts<object>(
      'For {wanted} % vol add <strong>{sugarToAddG}</strong> of table sugar to what is above.',
      {
        wanted: '12',
        sugarToAddG: { shown: '80 g' },
        strong,
      },
    );
  expect(said()).toEqual([
    'For 12 % vol add ',
    { strong: [{ shown: '80 g' }] },
    ' of table sugar to what is above.',
  ]);
  setLanguage('de');
  expect(said()).toEqual([
    'Für 12 % vol zu Obigem ',
    { strong: [{ shown: '80 g' }] },
    ' Haushaltszucker geben.',
  ]);
});

test('a sentence without parts is one part, its text', () => {
  expect(sayParts('Heat off', {})).toEqual(['Heat off']);
});
