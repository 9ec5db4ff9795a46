import { expect, test } from 'vitest';
import { timeClosedS } from '../../../main/session/time-closed.ts';

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
  ['it was, and lost its clock', { monoS: 50, wallMs: wallAfter(-90_000), uptimeS: 50 }, 50],
])('how long a program was closed: %s', (_, now, closedS) => {
  expect(timeClosedS(written, now)).toBeCloseTo(closedS, 6);
});
