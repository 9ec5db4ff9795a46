import { describe, expect, test } from 'vitest';
import { stageWords } from '../../../renderer/understand/plates-words.ts';

describe('stageWords', () => {
  test('says a range in whole plates, an open end as “at least”, and nothing where none would do', () => {
    expect(
      [
        { value: 5.2, low: 4.1, high: 7.8 },
        { value: 5.2, low: 5.1, high: 5.3 },
        { value: 5.2, low: 4.4, high: null },
        { value: null, low: 6, high: null },
        { value: null, low: null, high: null },
      ].map(stageWords),
    ).toEqual(['4–8', 'about 5', 'at least 4', 'at least 6', null]);
  });
});
