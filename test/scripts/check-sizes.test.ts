import { expect, test } from 'vitest';
import { checkSizes, sizeLimits } from '../../scripts/check-sizes.ts';

const ofLines = (file: string, count: number) => ({ file, text: `${'x;\n'.repeat(count)}` });

test('files at the limits pass', () => {
  const files = [
    ...Array.from({ length: 6 }, (_, index) => ofLines(`main/a${index}.ts`, sizeLimits.median)),
    ...Array.from({ length: 3 }, (_, i) => ofLines(`main/b${i}.ts`, sizeLimits.ninetyPercent)),
    ofLines('main/c.ts', sizeLimits.largest),
    ofLines('test/main/c.test.ts', sizeLimits.largestTest),
    { file: 'main/index.ts', text: "export * from './a.ts';\nexport { b } from './b.ts';\n" },
  ];
  expect(checkSizes(files)).toEqual({
    fileCount: 12,
    medianLines: 80,
    ninetyPercentLines: 250,
    failures: [],
  });
});

test('a long median, a long tail, a long file, a long test and code in an index are each reported', () => {
  const files = [
    ofLines('main/a.ts', 401),
    ofLines('test/main/a.test.ts', 601),
    { file: 'main/b/index.ts', text: "export * from './a.ts';\n\nexport const b = 1;\n" },
    ofLines('main/c.ts', 260),
  ];
  expect(checkSizes(files).failures).toEqual([
    'main/a.ts:401: 401 lines, at most 400',
    'test/main/a.test.ts:601: 601 lines, at most 600',
    'the median file has 260 lines, at most 80',
    'one file in ten is over 401 lines, at most 250',
    'main/b/index.ts:3: an index.ts holds "export … from" lines only',
  ]);
});

test('a long function of the monitor is reported, where it holds others from 81 lines on', () => {
  const body = (lines: number) => '  step();\n'.repeat(lines - 2);
  const closure = (lines: number) =>
    `export function createWatch() {\n  const see = (): void => {\n    step();\n    step();\n  };\n${'  step();\n'.repeat(lines - 6)}}\n`;
  const monitor = (name: string, text: string) => ({
    file: `shared-core/monitor/${name}.ts`,
    text,
  });
  const files = [
    ...Array.from({ length: 10 }, (_, index) => ofLines(`main/a${index}.ts`, 3)),
    monitor('short', `function short() {\n${body(40)}}\n`),
    monitor('long', `\nfunction long() {\n${body(41)}}\n`),
    monitor('table', `const table = {\n  act: () => {\n${body(41)}},\n};\n`),
    monitor('closure', closure(80)),
    monitor('long-closure', closure(81)),
    { file: 'main/elsewhere.ts', text: `function long() {\n${body(60)}}\n` },
  ];
  expect(checkSizes(files).failures).toEqual([
    'shared-core/monitor/long.ts:2: long has 41 lines, at most 40',
    'shared-core/monitor/table.ts:2: act has 41 lines, at most 40',
    'shared-core/monitor/long-closure.ts:1: createWatch has 81 lines, at most 80',
  ]);
});
