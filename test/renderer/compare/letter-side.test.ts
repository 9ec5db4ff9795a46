import { expect, test } from 'vitest';
import { letterSide } from '../../../renderer/compare/letter-side.ts';

const own = [300, 78] as const;

test.each([
  ['nothing else is drawn', [], 'above'],
  [
    'another line runs close above',
    [
      [
        [0, 79],
        [600, 79],
      ],
    ],
    'below',
  ],
  [
    'another line runs far above',
    [
      [
        [0, 83],
        [600, 83],
      ],
    ],
    'above',
  ],
  [
    'another line runs below',
    [
      [
        [0, 77],
        [600, 77],
      ],
    ],
    'above',
  ],
  [
    'the other line has ended by then',
    [
      [
        [0, 79],
        [200, 79],
      ],
    ],
    'above',
  ],
  [
    'the other line has a gap there',
    [
      [
        [0, 79],
        [300, null],
        [600, 79],
      ],
    ],
    'above',
  ],
] as const)('where %s, a letter stands clear of it', (_, others, side) => {
  expect(letterSide(own, others, 1.5)).toBe(side);
});
