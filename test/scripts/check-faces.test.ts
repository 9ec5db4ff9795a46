import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkFaces } from '../../scripts/check-faces.ts';

const sources = {
  'shared-core/index.ts':
    "export { azeotrope, heat, lonely } from './heat/index.ts';\nexport { still } from './still/index.ts';",
  'shared-core/heat/index.ts':
    "export { azeotrope, heat, lonely, loss } from './heat.ts';\nexport type { Inner } from './inner.ts';",
  'shared-core/heat/heat.ts': "import type { Inner } from './inner.ts';\nexport const heat = 1;",
  'shared-core/heat/inner.ts': 'export type Inner = number;',
  'shared-core/heat/forgotten.ts': 'export const forgotten = 1;',
  'shared-core/still/index.ts': "export { still } from './still.ts';",
  'shared-core/still/still.ts':
    "import { loss } from '../heat/index.ts';\nexport const still = loss;",
  'renderer/main.tsx':
    "import { heat } from '#shared-core';\nnew URL('./worker.ts', import.meta.url);",
  'renderer/worker.ts': "import type { still } from '#shared-core';",
  'test/forgotten.test.ts': "import { forgotten } from '../shared-core/heat/forgotten.ts';",
} as const;

let root: string;
beforeAll(() => {
  root = mkdtempSync(path.join(tmpdir(), 'faces-'));
  for (const [file, text] of Object.entries(sources)) {
    mkdirSync(path.join(root, path.dirname(file)), { recursive: true });
    writeFileSync(path.join(root, file), `${text}\n`);
  }
});
afterAll(() => rmSync(root, { recursive: true }));

test('a name that no other layer or room uses, and a file that only a test reaches, are found', () => {
  expect(checkFaces(root, Object.keys(sources))).toEqual({
    exported: 4,
    failures: [
      'shared-core/index.ts: lonely is used by no other layer',
      'shared-core/heat/index.ts: Inner is used by no other room and no other layer',
      'shared-core/heat/forgotten.ts: no command and no shell reaches it; use it or drop it',
    ],
  });
});

test('more names than one person can know are too many', () => {
  expect(checkFaces(root, Object.keys(sources), 3).failures).toContainEqual(
    expect.stringMatching(/^shared-core\/index\.ts: 4 names, at most 3;/),
  );
});
