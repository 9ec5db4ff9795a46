/**
 * A simulated still whose probe speaks through a pseudo-terminal, for rehearsals and tests.
 *
 * Usage: npm run --silent virtual-probe -- --help
 *
 * Prints the path to connect to, and what must be known of the still. While it runs, the lines `heat-on`,
 * `heat-eased` and `heat-off` typed here turn the simulated heater; Ctrl+C pulls the plug.
 */
import { rmSync, symlinkSync } from 'node:fs';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { openPseudoTerminal, startVirtualProbe, systemClock } from '#main';
import { stillInWords } from './virtual-probe/still-in-words.ts';
import {
  parseVirtualProbeOptions,
  virtualProbeUsage,
} from './virtual-probe/virtual-probe-options.ts';

const options = parseVirtualProbeOptions(process.argv.slice(2));
if (!options.ok) stop(`${options.error}\n\n${virtualProbeUsage}`, 2);
if (options.value.help) {
  console.log(virtualProbeUsage);
  process.exit(0);
}
const { rig, speed, seed, link, cold } = options.value;

const terminal = openPseudoTerminal();
if (!terminal.ok) {
  stop(
    `No pseudo terminal here: ${terminal.error}. The rehearsal inside the app works without one.`,
    1,
  );
}
if (link !== null) {
  rmSync(link, { force: true });
  symlinkSync(terminal.value.path, link);
}
const probe = startVirtualProbe({
  rig,
  seed,
  timeScale: speed,
  heated: !cold,
  clock: systemClock,
  send: (bytes) => terminal.value.write(bytes),
});
console.log(link ?? terminal.value.path);
for (const line of stillInWords(options.value)) console.error(line);

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
  if (link !== null) rmSync(link, { force: true });
  process.exit(0);
}

function stop(message: string, exitCode: number): never {
  console.error(message);
  process.exit(exitCode);
}
