import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { shippedPackages } from '../../scripts/notices/shipped-packages.ts';
import { projectRoot } from '../../scripts/testing/step.ts';
import { noticesFile, thirdPartyNotices } from '../../scripts/third-party-notices.ts';

test('the notices are those of the packages as installed; if not, run scripts/third-party-notices.ts', () => {
  expect(readFileSync(noticesFile, 'utf8')).toBe(thirdPartyNotices());
});

test('fonts, drawing, serial port and printer are among what is shipped; tools of the workshop are not', () => {
  const names = new Set(shippedPackages(projectRoot).map(({ name }) => name));
  const shipped = [
    '@expo-google-fonts/source-sans-3',
    '@fontsource-variable/atkinson-hyperlegible-next',
    'react',
    'recharts',
    'd3-scale',
    'serialport',
    'debug',
    'pdfkit',
    'zod',
  ];
  expect(shipped.filter((name) => !names.has(name))).toEqual([]);
  expect(['vitest', 'typescript', 'electron', 'vite'].filter((name) => names.has(name))).toEqual(
    [],
  );
});

test('both typefaces stand there with their licence', () => {
  expect(
    readFileSync(noticesFile, 'utf8').match(/SIL OPEN FONT LICENSE Version 1\.1/g)?.length,
  ).toBe(2);
});
