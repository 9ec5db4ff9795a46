import process from 'node:process';
import { openPseudoTerminal } from '#main';
import { latin1Bytes } from '#shared-core';

/**
 * The probe's end of a soak, in a process of its own: four channels a line, as many lines a second as its argument says, or
 * `flood`. Says where its pseudo-terminal is, begins at the first message, stops at the next and says how many it sent.
 */
const [pace = '100'] = process.argv.slice(2);
const terminal = openPseudoTerminal();
if (!terminal.ok) throw new Error(terminal.error);
let sent = 0;

function line(): string {
  const head = (20 + (sent % 1024) / 16).toFixed(4);
  sent += 1;
  return `head,${head},pot,91.5000,room,20.5000,condenser,18.2500\n`;
}

process.on('message', () => {
  const startMs = performance.now();
  const timer = setInterval(() => {
    const seconds = (performance.now() - startMs) / 1000;
    const due = pace === 'flood' ? sent + 64 : Math.floor(seconds * Number(pace));
    let text = '';
    while (sent < due) text += line();
    if (text !== '') terminal.value.write(latin1Bytes(text));
  }, 1);
  process.once('message', () => {
    clearInterval(timer);
    process.send?.({ sent });
  });
});
process.send?.({ path: terminal.value.path });
