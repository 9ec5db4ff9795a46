import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { forkSideProcess } from '../../../main/side-process/fork-side-process.ts';
import { until } from '../probe/support/until.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** A process of this text, and all that it said. */
async function forked(text: string, ending = 'mjs') {
  const file = path.join(await temporaryFolder(), `entry.${ending}`);
  await writeFile(file, text);
  const side = forkSideProcess(pathToFileURL(file));
  onTestFinished(() => side.kill());
  const heard: unknown[] = [];
  let exits = 0;
  side.on((message) => heard.push(message));
  side.onExit(() => {
    exits += 1;
  });
  return { side, heard, exits: () => exits };
}

const echo =
  "process.on('message', (message) => process.send({ heard: message, pid: process.pid }));";

test('what is posted is heard there, and what it says here, by its number of the system', async () => {
  const { side, heard } = await forked(echo);
  side.post({ type: 'ping', count: 7 });
  await until('the answer', () => heard.length === 1);
  expect(heard).toEqual([{ heard: { type: 'ping', count: 7 }, pid: side.processId }]);
  expect(side.processId).not.toBe(process.pid);
});

test('an entry in TypeScript is run from source', async () => {
  const { side, heard } = await forked(
    `const told: number = 7;\n${echo}\nprocess.send?.({ told });`,
    'ts',
  );
  await until('its word', () => heard.length === 1);
  expect(heard).toEqual([{ told: 7 }]);
  side.kill();
});

test('one that is ended, or ends by itself, is told once, and what is posted to it then harms nothing', async () => {
  const ended = await forked(echo);
  ended.side.kill();
  await until('its end', () => ended.exits() === 1);
  ended.side.post({ type: 'ping', count: 1 });
  const failed = await forked('process.exit(3);');
  await until('its end', () => failed.exits() === 1);
  failed.side.post({ type: 'ping', count: 1 });
  expect([ended.heard, failed.heard]).toEqual([[], []]);
});
