import { spawn } from 'node:child_process';
import path from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { onTestFinished } from 'vitest';

/** Services in a process of their own that record what is at a port; with them the process that reads it. Killed when the test is over. */
export async function startRecordingServices(runsFolder: string, port: string) {
  const program = path.join(import.meta.dirname, 'services-program.ts');
  const child = spawn(process.execPath, ['--import', 'tsx', program, runsFolder, port], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const next = async () => JSON.parse(String((await lines.next()).value));
  const started = await next();
  if (!started.ok) throw new Error(JSON.stringify(started));
  return { child, runId: String(started.value.runId), readerId: Number(await next()) };
}
