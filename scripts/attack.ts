/**
 * Attacks the services of the loopback shell from outside while they record from a probe over a real pseudo-terminal, and prints
 * for each attack what became of it, the services' longest piece of work, their memory, and how far stamps were moved.
 *
 * Usage: npx tsx scripts/attack.ts
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type AttackOutcome, attackServices } from './attack/attack-services.ts';
import { attacks } from './attack/attacks.ts';
import { watchMachineLoad } from './measuring/machine-load.ts';

const folder = await mkdtemp(path.join(tmpdir(), 'attack-'));
const load = watchMachineLoad();
try {
  const { quiet, outcomes, usualShiftMs, recordedLines, lostLines, checks } = await attackServices(
    folder,
    attacks,
  );
  for (const outcome of [quiet, ...outcomes]) console.log(inOneLine(outcome));
  console.log(
    `${recordedLines.length} lines recorded, ${lostLines.length} lost; stamps under attack off by ${usualShiftMs.toFixed(1)} ms (median)`,
  );
  console.log(load.report());
  console.log(JSON.stringify(checks.map(({ state, timeDoubts }) => ({ state, timeDoubts }))));
} finally {
  await rm(folder, { recursive: true, force: true });
}

function inOneLine(outcome: AttackOutcome): string {
  const { name, longestStallMs, moreMb, written, usualShiftMs, worstShiftMs } = outcome;
  return (
    `${name}: ${outcome.outcome}; longest piece of work ${longestStallMs.toFixed(0)} ms of the processor, ${moreMb.toFixed(1)} MB more, ` +
    `${written} lines, stamps off by ${usualShiftMs.toFixed(1)} ms (median), ${worstShiftMs.toFixed(1)} ms (worst)`
  );
}
