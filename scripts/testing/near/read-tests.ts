import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { parseJson } from '../../../shared-core/result/index.ts';
import type { TestFile } from './near-tests.ts';

/** The part of vitest's JSON report that tells how long a file took. */
const timedSchema = z.object({
  testResults: z.array(z.object({ name: z.string(), startTime: z.number(), endTime: z.number() })),
});

/** All tests but the journeys, which need a built window and a minute each. */
export function readTests(root: string, report: string | null): readonly TestFile[] {
  const times = readTimes(root, report);
  return readdirSync(path.join(root, 'test'), { recursive: true, encoding: 'utf8' })
    .map((name) => `test/${name.replaceAll(path.sep, '/')}`)
    .filter((file) => /\.test\.tsx?$/.test(file) && !file.startsWith('test/browser/'))
    .map((file) => ({
      file,
      imports: importsIn(file, readFileSync(path.join(root, file), 'utf8')),
      tookS: times.get(file),
    }));
}

export function importsIn(file: string, text: string): ReadonlySet<string> {
  const named = [...text.matchAll(/from '(\.{1,2}\/[^']+)'/g)].map(([, to = '']) => to);
  const folder = path.posix.dirname(file);
  return new Set(named.map((to) => path.posix.normalize(path.posix.join(folder, to))));
}

function readTimes(root: string, report: string | null): ReadonlyMap<string, number> {
  const parsed = timedSchema.safeParse(parseJson(report ?? 'null'));
  const results = parsed.success ? parsed.data.testResults : [];
  return new Map(
    results.map(({ name, startTime, endTime }) => [
      path.relative(root, name).replaceAll(path.sep, '/'),
      (endTime - startTime) / 1000,
    ]),
  );
}
