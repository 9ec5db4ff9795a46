/**
 * What becomes of the record while something beside the reader of the probe stands still, as a suspended or starved process does: by
 * how much stamps of lines written meanwhile lie off those of quiet times, what is lost, and whether a sleep is made of it. A counting probe
 * over a real pseudo-terminal; the services, the desk, a window and the disk are halted in turn.
 *
 * Usage: npx tsx scripts/halted-stamps.ts [HALT-SECONDS]
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { attackServices } from './attack/attack-services.ts';
import { halts } from './attack/halts.ts';

const [haltS = 10] = process.argv.slice(2).map(Number);

const folder = await mkdtemp(path.join(tmpdir(), 'halted-'));
try {
  const { quiet, outcomes, lostLines, sleeps, checks } = await attackServices(folder, halts(haltS));
  for (const { name, outcome, written, usualShiftMs, worstShiftMs } of [quiet, ...outcomes]) {
    console.log(
      `${name}: ${outcome}; stamps of ${written} lines off by ${usualShiftMs.toFixed(1)} ms (median), ${worstShiftMs.toFixed(1)} ms (worst)`,
    );
  }
  const doubts = checks.flatMap(({ timeDoubts }) => timeDoubts);
  console.log(
    `${lostLines.length} lost, ${sleeps} sleeps invented, ${doubts.length} doubtful moments`,
  );
} finally {
  await rm(folder, { recursive: true, force: true });
}
