import { expect, test } from 'vitest';
import { timeClosed } from '../../../main/session/time-closed.ts';

const written = { monoS: 5000, wallMs: 1_000_000_000_000 };
const wallAfter = (seconds: number) => written.wallMs + seconds * 1000;

test.each([
  ['both clocks agree', { monoS: 5040, wallMs: wallAfter(40), uptimeS: 5040 }, 40],
  ['the clock was set an hour on', { monoS: 5040, wallMs: wallAfter(3640), uptimeS: 5040 }, 40],
  ['the clock was set back', { monoS: 5040, wallMs: wallAfter(-3560), uptimeS: 5040 }, 40],
  ['the computer slept', { monoS: 5010, wallMs: wallAfter(600), uptimeS: 5600 }, 600],
  [
    'it had slept before, and the clock was set',
    { monoS: 5010, wallMs: wallAfter(3610), uptimeS: 6010 },
    10,
  ],
  ['the computer was started again', { monoS: 50, wallMs: wallAfter(90), uptimeS: 50 }, 90],
  ['it was, long before', { monoS: 5100, wallMs: wallAfter(90_000), uptimeS: 5100 }, 90_000],
])('how long a program was closed: %s', (_, now, closedS) => {
  expect(timeClosed(written, now)).toEqual({ closedS: expect.closeTo(closedS, 6), isKnown: true });
});

test.each([
  ['its clock was empty', -90_000],
  ['its clock was set back an hour', -3000],
  ['its clock was set back to soon after the last record', 12],
])(
  'how long a program was closed that no clock tells: the computer was off, and %s',
  (_, byWallS) => {
    const now = { monoS: 50, wallMs: wallAfter(byWallS), uptimeS: 50 };
    expect(timeClosed(written, now)).toEqual({ closedS: 50, isKnown: false });
  },
);
