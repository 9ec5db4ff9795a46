import { expect, test } from 'vitest';
import { clockEvent, readClocks } from '../../../main/session/clock-watch.ts';

const before = { monoS: 100, wallMs: 1_741_947_300_000, uptimeS: 5000 };
/** Ten counted seconds later, or what else happened. */
const after = ({ countedS = 10, sleptS = 0, setS = 0 }) => ({
  monoS: before.monoS + countedS,
  wallMs: before.wallMs + 1000 * (countedS + sleptS + setS),
  uptimeS: before.uptimeS + countedS + sleptS,
});

test.each([
  ['ten seconds that passed alike on all clocks', {}, null],
  ['a process that stood still for an hour', { countedS: 3600 }, null],
  ['clocks that differ by less than two seconds', { sleptS: 1.9 }, null],
  ['a sleep of two seconds', { sleptS: 2 }, { sleptS: 2, wallStepS: 0 }],
  ['a sleep of an hour', { sleptS: 3600 }, { sleptS: 3600, wallStepS: 0 }],
  ['a wall clock set by less than two seconds', { setS: 1.9 }, null],
  ['a wall clock set back by less than two seconds', { setS: -1.9 }, null],
  ['a wall clock set by two seconds', { setS: 2 }, { sleptS: 0, wallStepS: 2 }],
  ['a wall clock set back by an hour', { setS: -3600 }, { sleptS: 0, wallStepS: -3600 }],
  ['a sleep and a wall clock set in it', { sleptS: 60, setS: -30 }, { sleptS: 60, wallStepS: -30 }],
])('of %s the record tells what is worth it', (_, happened, told) => {
  expect(clockEvent(before, after(happened))).toEqual(
    told === null ? null : { sinceS: 100, ...told },
  );
});

test('a process that is halted between two of the clocks reads them again, and sees no sleep in it', () => {
  let nowS = 100;
  let halts = 1;
  const clock = { monotonicS: () => nowS, wallMs: () => 1000 * nowS };
  const uptimeS = () => {
    if (halts > 0) nowS += 8;
    halts -= 1;
    return nowS + 4900;
  };
  expect(readClocks(clock, uptimeS)).toEqual({ monoS: 108, wallMs: 108_000, uptimeS: 5008 });
});
