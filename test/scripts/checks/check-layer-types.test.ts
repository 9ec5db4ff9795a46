import { mkdirSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { createTypeChecker } from '../../../scripts/checks/check-layer-types.ts';
import { projectRoot } from '../../../scripts/testing/step.ts';
import { temporaryFolder } from '../../main/support/temporary-folder.ts';

const right = {
  'below/warmth.ts': 'export const warmthC: number = 20;\n',
  'above/words.ts':
    "import { warmthC } from '../below/warmth.ts';\nexport const words: string = warmthC.toFixed(1);\n",
};

/** Two layers, the upper of which may use Node. */
async function project() {
  const folder = await temporaryFolder();
  const write = (files: Readonly<Record<string, string>>) => {
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(path.join(folder, path.dirname(file)), { recursive: true });
      writeFileSync(path.join(folder, file), text);
    }
  };
  const compilerOptions = {
    module: 'preserve',
    moduleResolution: 'bundler',
    lib: ['ES2023'],
    allowImportingTsExtensions: true,
    skipLibCheck: true,
    strict: true,
    noEmit: true,
  };
  const layer = (types: readonly string[]) =>
    JSON.stringify({ compilerOptions: { ...compilerOptions, types }, include: ['**/*.ts'] });
  symlinkSync(path.join(projectRoot, 'node_modules'), path.join(folder, 'node_modules'));
  write({ 'below/tsconfig.json': layer([]), 'above/tsconfig.json': layer(['node']), ...right });
  /** As a command that is started anew finds it: file and words of all that is wrong. */
  const wrong = () => {
    const check = createTypeChecker(folder, path.join(folder, 'memory'));
    return ['below', 'above'].map((name) =>
      check(name).map(({ file, messageText }) => [
        file && path.relative(folder, file.fileName),
        ts.flattenDiagnosticMessageText(messageText, ' '),
      ]),
    );
  };
  return { folder, write, wrong };
}

test('what is wrong in a layer is named there alone, as long as it is wrong', async () => {
  const { folder, write, wrong } = await project();
  expect(wrong()).toEqual([[], []]);
  expect(readdirSync(path.join(folder, 'memory'))).toHaveLength(2);
  write({ 'below/warmth.ts': "export const warmthC: number = 'warm';\n" });
  const named = [[['below/warmth.ts', "Type 'string' is not assignable to type 'number'."]], []];
  expect(wrong()).toEqual(named);
  // Nothing has changed since, and what was found is remembered.
  expect(wrong()).toEqual(named);
  write(right);
  expect(wrong()).toEqual([[], []]);
});

test('a layer is checked again where one below it has changed', async () => {
  const { write, wrong } = await project();
  expect(wrong()).toEqual([[], []]);
  write({ 'below/warmth.ts': "export const warmthC: string = '20';\n" });
  expect(wrong()).toEqual([
    [],
    [['above/words.ts', expect.stringContaining("'toFixed' does not exist on type 'string'")]],
  ]);
});

test('each layer knows what its own rules let it know, files that cannot be read included', async () => {
  const { write, wrong } = await project();
  const usesNode = "import { sep } from 'node:path';\nexport const between: string = sep;\n";
  write({ 'below/places.ts': usesNode, 'above/places.ts': usesNode, 'above/torn.ts': 'export {' });
  expect(wrong()).toEqual([
    [['below/places.ts', expect.stringContaining("'node:path'")]],
    [['above/torn.ts', "'}' expected."]],
  ]);
});

test('a layer without its rules is named, not passed over', async () => {
  const folder = await temporaryFolder();
  const [problem] = createTypeChecker(folder, folder)('nowhere');
  expect(ts.flattenDiagnosticMessageText(problem?.messageText, ' ')).toMatch(/Cannot read file/);
});
