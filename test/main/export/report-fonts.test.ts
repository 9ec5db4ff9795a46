import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { outsideArchive, reportFonts } from '../../../main/export/print/report-fonts.ts';

test('the fonts are files that native code can open, also in a packaged program', () => {
  expect([reportFonts.regular, reportFonts.bold].map(existsSync)).toEqual([true, true]);
  expect(
    [
      '/opt/monitor/resources/app.asar/node_modules/f/a.ttf',
      'C:\\Monitor\\resources\\app.asar\\node_modules\\f\\a.ttf',
      '/home/a/project/node_modules/f/a.ttf',
    ].map(outsideArchive),
  ).toEqual([
    '/opt/monitor/resources/app.asar.unpacked/node_modules/f/a.ttf',
    'C:\\Monitor\\resources\\app.asar.unpacked\\node_modules\\f\\a.ttf',
    '/home/a/project/node_modules/f/a.ttf',
  ]);
});
