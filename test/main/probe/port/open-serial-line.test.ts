import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openSerialLine } from '../../../../main/probe/port/open-serial-line.ts';
import { temporaryFolder } from '../../support/temporary-folder.ts';
import { until } from '../support/until.ts';

test('a plug pulled while what it sent is being taken in ends the line all the same', async () => {
  const port = path.join(await temporaryFolder(), 'port');
  const socat = spawn('socat', [`pty,raw,echo=0,link=${port}`, '-'], {
    stdio: ['pipe', 'ignore', 'ignore'],
  });
  onTestFinished(() => void socat.kill());
  await until('socat to make the port', () => existsSync(port));
  const told: string[] = [];
  const opened = await openSerialLine(
    { path: port, baudRate: 9600, parity: 'none' },
    {
      bytes(chunk) {
        told.push(Buffer.from(chunk).toString('latin1'));
        // The next read is begun after this returns, and finds the line hung up already.
        socat.kill();
        while (existsSync(port)) blockMs(10);
        blockMs(200);
      },
      closed: () => told.push('closed'),
    },
  );
  if (!opened.ok) throw new Error(opened.error.kind);
  onTestFinished(() => opened.value.close());
  socat.stdin.write('20.5\n');
  await until('the line to end', () => told.includes('closed'), 4);
  expect(told).toEqual(['20.5\n', 'closed']);
});

/** Stops this thread, as a busy computer would. */
function blockMs(milliseconds: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, milliseconds);
}
