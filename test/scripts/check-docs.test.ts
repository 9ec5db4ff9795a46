import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkDocs } from '../../scripts/check-docs.ts';
import { exampleSteps } from '../../scripts/checks/example-steps.ts';
import { compare } from '../../scripts/checks/run-example.ts';
import * as fixture from './check-docs-fixture/index.ts';

const folder = path.join(import.meta.dirname, 'check-docs-fixture');
const inFixture = (file: string) =>
  path.relative(process.cwd(), path.join(folder, file)).split(path.sep).join('/');

const subject = { root: folder, faces: [path.join(folder, 'index.ts')], names: () => fixture };

// Starting the compiler takes seconds on a busy machine.
describe('checkDocs', () => {
  test('reports each missing element and each example that does not hold, with file and line', async () => {
    const bare = inFixture('probe/bare-formula.ts:2');
    const wrong = (line: number) => inFixture(`probe/wrong-examples.ts:${line}`);
    expect(await checkDocs(subject)).toEqual({
      functionCount: 6,
      examplesPassed: 4,
      examplesFailed: 6,
      failures: [
        `${inFixture('alarms/raise-alarm.ts:6')}: silent has no description (say what it computes)`,
        `${bare}: bareFormula shows no equation (write it, or name the method that is solved)`,
        `${bare}: bareFormula leaves the unit open of "drift" (end the name in a unit or write the unit in brackets)`,
        `${bare}: bareFormula states no valid range of its arguments`,
        `${bare}: bareFormula names no source (a line "Source: …" or @see)`,
        `${bare}: bareFormula has no @example`,
        `${wrong(7)}: wrongExamples(4) gives 2, not 2.1 ± 0.05`,
        `${wrong(8)}: wrongExamples(-1) gives NaN, not null`,
        `${wrong(9)}: "two" is not JSON`,
        `${wrong(10)}: wrongExamples(4) gives 2; it should throw RangeError`,
        `${wrong(11)}: missingName(4) throws ReferenceError: missingName is not defined`,
        `${wrong(12)}: the example ends without a checked value`,
      ],
    });
  });

  test('can be narrowed to some folders', async () => {
    const report = await checkDocs({
      ...subject,
      folders: ['alarms'],
    });
    expect(report).toMatchObject({ functionCount: 2, examplesPassed: 0, examplesFailed: 0 });
  });
});

describe('exampleSteps', () => {
  test('an example without any checked value is a failure, not a pass', () => {
    expect(exampleSteps('halve(3)', 12)).toEqual([
      { ok: false, line: 12, problem: 'the example ends without a checked value' },
    ]);
  });

  test('a declaration cannot be the checked line', () => {
    expect(exampleSteps('const x = 1; // => 1', 1)).toEqual([
      { ok: false, line: 1, problem: 'the checked line is not an expression' },
    ]);
  });

  test('a tolerance is required', () => {
    expect(exampleSteps('halve(3) // ≈ 1.5', 1)).toEqual([
      { ok: false, line: 1, problem: '"1.5" is not "number ± tolerance"' },
    ]);
  });
});

describe('compare', () => {
  test('a value on the edge of its tolerance holds and one beyond does not', () => {
    const claim = { kind: 'near', value: 0.3, tolerance: 0.1 } as const;
    expect(compare(0.4, claim)).toBeUndefined();
    expect(compare(0.401, claim)).toBe('gives 0.401, not 0.3 ± 0.1');
    expect(compare(Number.NaN, claim)).toBe('gives NaN, not 0.3 ± 0.1');
  });

  test('NaN inside data never equals the null that JSON makes of it', () => {
    expect(compare({ a: Number.NaN }, { kind: 'equal', json: { a: null } })).toBe(
      'gives {"a":null}, not {"a":null}',
    );
  });
});
