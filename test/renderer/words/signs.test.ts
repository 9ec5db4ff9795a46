import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { signs, traceSigns } from '../../../renderer/words/index.ts';

const renderer = path.join(import.meta.dirname, '..', '..', '..', 'renderer');
const files = readdirSync(renderer, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(ts|tsx|css)$/.test(file))
  .map((file) => ({
    file: file.replaceAll('\\', '/'),
    text: readFileSync(path.join(renderer, file), 'utf8'),
  }));
/** Geometric shapes and dingbats; small triangles point where a press leads. */
const drawn = /[\u25a0-\u25ff\u2605\u2700-\u27bf•](?<![▸▾▴◂])/gu;

test('every sign has one meaning, and every meaning one sign', () => {
  const all = [...Object.values(signs), ...traceSigns];
  expect(new Set(all).size).toBe(all.length);
});

test('no part of the window draws a sign of its own: what is not from the table has its meaning there', () => {
  const found = files
    .filter(({ file }) => file !== 'words/signs.ts')
    .flatMap(({ file, text }) => [...new Set(text.match(drawn))].map((sign) => `${sign} ${file}`));
  expect(found.toSorted()).toEqual(
    [
      `${signs.done} calibrate/calibration-step.tsx`,
      `${signs.done} design/controls.css`,
      `${signs.done} prepare/safety-section.tsx`,
      `${signs.done} prepare/steam-reading.tsx`,
      `${signs.problem} design/controls.css`,
      `${signs.saved} window/window.css`,
      `${signs.toDo} prepare/prepare.css`,
    ].toSorted(),
  );
});
