/**
 * A simulated still whose probe speaks through a pseudo-terminal, for rehearsals and tests.
 *
 * Usage: npm run --silent virtual-probe -- [--rig NAME] [--speed 1…240] [--seed N] [--link PATH] [--cold]
 *
 * Prints the path to connect to. While it runs, the lines `heat-on`, `heat-eased` and `heat-off`
 * typed here turn the simulated heater; Ctrl+C pulls the plug.
 */
import { rmSync, symlinkSync } from 'node:fs';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import {
  isVirtualRigName,
  openPseudoTerminal,
  startVirtualProbe,
  systemClock,
  virtualRigs,
} from '#main';

const { values } = parseArgs({
  options: {
    rig: { type: 'string', default: 'glass-bead-column' },
    speed: { type: 'string', default: '20' },
    seed: { type: 'string', default: '1' },
    link: { type: 'string' },
    cold: { type: 'boolean', default: false },
  },
});
const speed = Number(values.speed);
const seed = Number(values.seed);
const { rig, link } = values;

if (!isVirtualRigName(rig)) stop(`--rig is one of: ${Object.keys(virtualRigs).join(', ')}.`);
if (!(speed >= 1 && speed <= 240)) stop('--speed is a number from 1 to 240.');
if (!Number.isSafeInteger(seed)) stop('--seed is a whole number.');

const terminal = openPseudoTerminal();
if (!terminal.ok) {
  stop(
    `No pseudo-terminal here: ${terminal.error}. The demo rig inside the app works without one.`,
  );
}
if (link !== undefined) {
  rmSync(link, { force: true });
  symlinkSync(terminal.value.path, link);
}
const probe = startVirtualProbe({
  rig,
  seed,
  timeScale: speed,
  heated: !values.cold,
  clock: systemClock,
  send: (bytes) => terminal.value.write(bytes),
});
console.log(link ?? terminal.value.path);
console.error(`A ${rig} at ${speed} times the speed, seed ${seed}. Ctrl+C pulls the plug.`);

createInterface({ input: process.stdin }).on('line', (typed) => {
  const command = typed.trim();
  if (command === 'heat-on' || command === 'heat-eased' || command === 'heat-off') {
    probe.heat(command);
  } else if (command !== '') {
    console.error('Understood here: heat-on, heat-eased, heat-off.');
  }
});
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, pullPlug);

function pullPlug(): void {
  probe.stop();
  terminal.ok && terminal.value.close();
  if (link !== undefined) rmSync(link, { force: true });
  process.exit(0);
}

function stop(message: string): never {
  console.error(message);
  process.exit(2);
}
