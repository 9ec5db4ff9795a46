import { expect, test } from 'vitest';
import { attackServices } from '../../../scripts/attack/attack-services.ts';
import { attacks } from '../../../scripts/attack/attacks.ts';
import { temporaryFolder } from '../../main/support/temporary-folder.ts';

/**
 * Far above what is measured (`npx tsx scripts/attack.ts` prints it), so that neither a busy computer nor garbage that nobody was in
 * a hurry to collect decides; far below what strangers once did: 440 MB, and stamps off by seconds.
 */
const mostMoreMb = 100;
const mostShiftMs = 250;

test('whatever another program sends, the run that is recorded loses no line and no moment of it moves', async () => {
  const { outcomes, recordedLines, lostLines, checks } = await attackServices(
    await temporaryFolder(),
    attacks,
  );
  expect(outcomes.map(({ outcome }) => outcome)).toEqual([
    'cut off',
    'cut off',
    '4 let in, 0 left',
    '12 let in',
    'request-invalid',
    expect.stringMatching(/ of 1000 answered meanwhile$/),
    '1500 refused and let go of',
  ]);
  expect(lostLines).toEqual([]);
  const first = recordedLines[0] ?? 0;
  expect(recordedLines).toEqual(recordedLines.map((_, index) => first + index));
  expect(outcomes.filter(({ usualShiftMs }) => Math.abs(usualShiftMs) > mostShiftMs)).toEqual([]);
  expect(outcomes.filter(({ moreMb }) => moreMb > mostMoreMb)).toEqual([]);
  expect(checks.map(({ state, timeDoubts }) => ({ state, timeDoubts }))).toEqual([
    { state: 'whole', timeDoubts: [] },
  ]);
}, 240_000);
