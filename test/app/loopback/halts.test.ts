import { expect, test } from 'vitest';
import { attackServices } from '../../../scripts/attack/attack-services.ts';
import { halts } from '../../../scripts/attack/halts.ts';
import { temporaryFolder } from '../../main/support/temporary-folder.ts';

const haltS = 4;
/** What was promised; `npx tsx scripts/halted-stamps.ts` prints what is measured. */
const mostShiftMs = 50;

test('whatever stands still beside the reader of the probe, no moment moves, no sleep is made of it and nothing is lost', async () => {
  const { outcomes, recordedLines, lostLines, sleeps, checks } = await attackServices(
    await temporaryFolder(),
    halts(haltS),
  );
  expect(outcomes.map(({ outcome }) => outcome)).toEqual([
    'went on',
    'answered once awake',
    'answered once awake',
    'went on',
  ]);
  const [first = 0] = recordedLines;
  expect(recordedLines).toEqual(recordedLines.map((_, index) => first + index));
  expect({ lostLines, sleeps }).toEqual({ lostLines: [], sleeps: 0 });
  expect(outcomes.filter(({ usualShiftMs }) => Math.abs(usualShiftMs) > mostShiftMs)).toEqual([]);
  expect(checks.map(({ state, timeDoubts }) => ({ state, timeDoubts }))).toEqual([
    { state: 'whole', timeDoubts: [] },
  ]);
}, 240_000);
