import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { z } from 'zod';
import { runCommand } from '../../scripts/testing/run-command.ts';
import { projectRoot } from '../../scripts/testing/step.ts';

/** Files that each break the layer table once, with the rule that must say so. */
const violations = {
  'shared-core/reads-files.ts': ["import 'node:fs';", 'shared-core-imports-only-zod-and-messages'],
  'shared-core/draws.ts': ["import 'react';", 'shared-core-imports-only-zod-and-messages'],
  'shared-core/serves.ts': [
    "import '../main/index.ts';",
    'shared-core-imports-only-zod-and-messages',
  ],
  'main/opens-a-window.ts': ["import 'electron';", 'electron-only-in-app'],
  'main/draws.ts': ["import 'react';", 'main-imports-shared-core-node-and-file-libraries'],
  'main/composes.ts': [
    "import '../app/index.ts';",
    'main-imports-shared-core-node-and-file-libraries',
  ],
  'renderer/reads-files.ts': ["import 'node:fs';", 'renderer-uses-no-node-module'],
  'renderer/serves.ts': ["import '#main';", 'renderer-imports-shared-core-and-ui-libraries'],
  'renderer/opens-a-window.ts': ["import 'electron';", 'electron-only-in-app'],
  'app/draws.ts': ["import '../renderer/index.ts';", 'app-imports-no-renderer-source'],
  'app/tests.ts': ["import '../test/helper.ts';", 'no-layer-imports-tests'],
  'scripts/opens-a-window.ts': ["import 'electron';", 'electron-only-in-app'],
  'shared-core/heat/one.ts': [
    "import type { two } from './two.ts';\nexport type one = two;",
    'no-circle-of-types',
  ],
  'shared-core/drawings/index.ts': [
    "import type { page } from '../pages/index.ts';\nexport type drawn = page;",
    'no-circle-of-types',
  ],
  'shared-core/still/reaches-in.ts': [
    "import type { one } from '../heat/one.ts';",
    'rooms-are-entered-by-their-face',
  ],
  'main/session/reaches-in.ts': [
    "import '../recorder/writer.ts';",
    'rooms-are-entered-by-their-face',
  ],
  'renderer/watch/reaches-in.ts': [
    "import type { strip } from '../strip/run-strip.ts';",
    'rooms-are-entered-by-their-face',
  ],
  'renderer/plan/index.ts': [
    "import type { prepare } from '../prepare/index.ts';\nexport type plan = prepare;",
    'no-circle-of-types',
  ],
  'main/reaches-in.ts': [
    "import type { one } from '../shared-core/heat/one.ts';",
    'layers-are-entered-by-their-face',
  ],
  'scripts/reaches-in.ts': [
    "import type { one } from '../shared-core/heat/one.ts';",
    'commands-enter-rooms-by-their-face',
  ],
} as const;

const allowed = {
  'shared-core/index.ts': "import 'zod';",
  'main/index.ts': "import '#shared-core';\nimport 'serialport';\nimport 'node:fs';",
  'renderer/index.ts': "import '#shared-core';\nimport 'react';\nimport 'recharts';",
  'renderer/strip/run-strip.ts': 'export type strip = string;',
  'renderer/prepare/index.ts': "export type { plan as prepare } from '../plan/index.ts';",
  'app/index.ts': "import '#main';\nimport '#shared-core';\nimport 'electron';\nimport 'ws';",
  'test/helper.ts': "import '../main/index.ts';\nimport '../shared-core/heat/one.ts';",
  'main/recorder/writer.ts': "import './sync.ts';",
  'main/recorder/sync.ts': "import '#shared-core';",
  'shared-core/heat/two.ts': "import type { one } from './one.ts';\nexport type two = one;",
  'shared-core/heat/index.ts': "export type { one } from './one.ts';",
  'shared-core/still/enters.ts':
    "import type { one } from '../heat/index.ts';\nexport type still = one;",
  'shared-core/still/hold/index.ts': 'export type hold = string;',
  'shared-core/heat/enters-inner.ts':
    "import type { hold } from '../still/hold/index.ts';\nexport type heat = hold;",
  'shared-core/questions/index.ts':
    "import type { drawn } from '../drawings/index.ts';\nexport type question = drawn;",
  'shared-core/pages/index.ts':
    "import type { question } from '../questions/index.ts';\nexport type page = question;",
  'scripts/enters.ts': "import type { one } from '../shared-core/heat/index.ts';",
} as const;

const cruiserFile = '.dependency-cruiser.mjs';
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'layers-'));
  const configuration = ['package.json', 'tsconfig.json', 'test/tsconfig.json', cruiserFile];
  for (const file of configuration) {
    cpSync(path.join(projectRoot, file), path.join(folder, file));
  }
  symlinkSync(path.join(projectRoot, 'node_modules'), path.join(folder, 'node_modules'));
  const sources = {
    ...allowed,
    ...Object.fromEntries(Object.entries(violations).map(([file, [text]]) => [file, text])),
  };
  for (const [file, text] of Object.entries(sources)) {
    mkdirSync(path.join(folder, path.dirname(file)), { recursive: true });
    writeFileSync(path.join(folder, file), `${text}\n`);
  }
});
afterAll(() => rmSync(folder, { recursive: true }));

const reportSchema = z.object({
  summary: z.object({
    violations: z.array(z.object({ from: z.string(), rule: z.object({ name: z.string() }) })),
  }),
});

test('every forbidden import is found by its rule, and no allowed one is', async () => {
  const cruise = path.join(
    projectRoot,
    'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
  );
  const { output } = await runCommand(
    process.execPath,
    [
      cruise,
      '--config',
      cruiserFile,
      '--output-type',
      'json',
      ...['app', 'main', 'renderer', 'shared-core', 'scripts', 'test'],
    ],
    { cwd: folder },
  );
  const { summary } = reportSchema.parse(JSON.parse(output));
  const found = new Map(Object.keys(violations).map((file) => [file, new Set<string>()]));
  for (const { from, rule } of summary.violations) {
    found.set(from, (found.get(from) ?? new Set()).add(rule.name));
  }
  const missed = Object.entries(violations).filter(
    ([file, [, rule]]) => !found.get(file)?.has(rule),
  );
  const wronglyFound = Object.keys(allowed).filter((file) => found.has(file));
  expect({ missed, wronglyFound }).toEqual({ missed: [], wronglyFound: [] });
});
