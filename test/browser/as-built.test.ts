import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { buildIfStale } from '../../scripts/building/build-if-stale.ts';
import { projectRoot, windowFolder, windowTarget } from '../../scripts/building/build-targets.ts';

/** Stands in the React that checks itself, and takes several times as long for it. */
const saysReactIsChecked = 'Download the React DevTools for a better development experience';

test('the window that a test builds is the one that people use, whatever the environment is called', async () => {
  await buildIfStale(windowTarget, { root: projectRoot, report: (line) => console.log(line) });
  const assets = path.join(windowFolder, 'assets');
  const scripts = readdirSync(assets).filter((name) => name.endsWith('.js'));
  const checked = scripts.filter((name) =>
    readFileSync(path.join(assets, name), 'utf8').includes(saysReactIsChecked),
  );
  expect([scripts.length > 1, checked]).toEqual([true, []]);
});
