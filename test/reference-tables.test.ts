import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const folder = path.join(import.meta.dirname, 'reference');
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
  /\.(csv|json)$/.test(file),
);
const headOf = (file: string) => {
  const text = readFileSync(path.join(folder, file), 'utf8');
  return file.endsWith('.json') ? text : text.slice(0, text.search(/^[^#]/m));
};

test.each(files)('the table %s names the work its numbers come from', (file) => {
  expect(headOf(file)).toMatch(/Source: \S|"source": "\S|IEC \d|ISO \d|NIST|OIML|from memory/);
});

test.each(files)('the table %s says nothing of how its numbers were come by', (file) => {
  expect(headOf(file)).not.toMatch(/\bREAD\b|\bMEMORY\b|[Gg]it[Hh]ub|mirror|public cop|"read"/);
});
