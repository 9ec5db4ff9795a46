import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder of the running test's own that goes away with it. */
export async function temporaryFolder(): Promise<string> {
  const folder = await mkdtemp(path.join(tmpdir(), 'still-head-test-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}
