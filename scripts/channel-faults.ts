/**
 * Measures what a channel other than the head can do to the calls to take the heat off: it vanishes, freezes, jumps or
 * lies at random seconds of simulated runs, for good or for a spell, while the head's readings stay as they are.
 *
 * Usage: npx tsx scripts/channel-faults.ts [--runs 200] [--faults 10] [--seed 1] [--list]
 *
 * Each run is watched with all channels true, then with so many faults, one at a time. A call counts as lost where none
 * stands any more at the second or later, with the heat still on. Ends with 1 if any is lost or comes more than 5 s later.
 */
import process from 'node:process';
import { parseArgs } from 'node:util';
import { drawChannelRun } from './channel-faults/draw-channel-run.ts';
import { faultTable, harmed } from './channel-faults/fault-table.ts';
import { type FaultEffect, judgeFaults } from './channel-faults/judge-fault.ts';

const { values: options } = parseArgs({
  options: {
    runs: { type: 'string', default: '200' },
    faults: { type: 'string', default: '10' },
    seed: { type: 'string', default: '1' },
    list: { type: 'boolean', default: false },
  },
});

const effects: FaultEffect[] = [];
for (let index = 0; index < Number(options.runs); index += 1) {
  const run = drawChannelRun(options.seed, index);
  for (const effect of judgeFaults(run, Number(options.faults), options.seed)) {
    effects.push(effect);
    if (options.list && (harmed(effect) || effect.falselyCalled)) console.log(inWords(effect));
  }
}
const spentS = process.cpuUsage().user / 1e6;
console.log(
  `${options.runs} runs, ${effects.length} faults, seed ${options.seed}, ${spentS.toFixed(0)} s of one core`,
);
for (const line of faultTable(effects)) console.log(line);
process.exitCode = effects.some(harmed) ? 1 : 0;

function inWords({ run, fault, lost, worstDelayS, falselyCalled, earlierS }: FaultEffect): string {
  const { channel, kind, fromS, toS, by, times } = fault;
  const until = toS === null ? 'for good' : `to ${toS} s`;
  return `${run}: ${channel} ${kind} from ${fromS} s ${until}, by ${by.toFixed(2)}, times ${times.toFixed(2)}: lost ${lost}, latest by ${worstDelayS} s, earlier by ${earlierS} s${falselyCalled ? ', FALSE' : ''}`;
}
