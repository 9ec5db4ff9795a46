import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { expect, onTestFinished, test } from 'vitest';

const program = path.join(import.meta.dirname, 'support', 'stuck-program.ts');

async function startStuck() {
  const folder = mkdtempSync(path.join(tmpdir(), 'stuck-'));
  const [windowFolder, runsFolder] = ['window', 'runs'].map((name) => path.join(folder, name));
  mkdirSync(windowFolder ?? '');
  const pipe = path.join(folder, 'pipe');
  execFileSync('mkfifo', [pipe]);
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', program, windowFolder ?? '', runsFolder ?? '', pipe],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  onTestFinished(() => {
    child.kill('SIGKILL');
    rmSync(folder, { recursive: true });
  });
  const lines = createInterface({ input: child.stdout });
  const said = async (part: string) => {
    for await (const line of lines) if (line.includes(part)) return;
    throw new Error(`It never said "${part}"`);
  };
  return { child, said };
}

test('a program with a system call that never returns ends all the same', async () => {
  const { child, said } = await startStuck();
  await said('Runs are kept in');
  child.kill('SIGTERM');
  const [, signal] = await once(child, 'exit');
  expect(signal).toBe('SIGKILL');
});
