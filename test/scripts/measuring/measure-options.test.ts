import { describe, expect, test } from 'vitest';
import { parseMeasureOptions } from '../../../scripts/measuring/measure-options.ts';

describe('parseMeasureOptions', () => {
  test('without words it times five minutes of Watch on a projector', () => {
    expect(parseMeasureOptions([])).toEqual({
      ok: true,
      value: {
        minutes: 5,
        readings: 0,
        view: 'watch',
        width: 1280,
        height: 720,
        slower: 1,
        hours: 0,
        profile: null,
      },
    });
  });

  test.each([
    [['--view', 'cellar'], '--view is one of: watch, understand, classroom.'],
    [['--size', 'large'], '--size is a width and a height, such as 1280x720.'],
    [
      ['--slower', '0.5'],
      '--minutes, --readings and --hours are numbers from 0, --slower is one from 1.',
    ],
    [
      ['--minutes', 'few'],
      '--minutes, --readings and --hours are numbers from 0, --slower is one from 1.',
    ],
  ])('%j is refused with a sentence', (words, error) => {
    expect(parseMeasureOptions(words)).toEqual({ ok: false, error });
  });
});
