import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { projectRoot } from '../../scripts/testing/step.ts';

test('the lock file pins every package by content and names no place to get it from', () => {
  const text = readFileSync(path.join(projectRoot, 'package-lock.json'), 'utf8');
  const lock = JSON.parse(text) as {
    packages: Record<string, { integrity?: string; inBundle?: boolean }>;
  };
  const unpinned = Object.entries(lock.packages).filter(
    ([folder, { integrity, inBundle }]) => folder !== '' && !integrity && !inBundle,
  );
  expect({ unpinned, places: text.match(/"resolved"|https?:\/\/registry/g) }).toEqual({
    unpinned: [],
    places: null,
  });
});
