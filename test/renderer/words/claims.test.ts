import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

const root = path.join(import.meta.dirname, '..', '..', '..');

/** Everything in quotes and between tags: what a person may come to read. */
function textsOf(file: string): readonly string[] {
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const parsed = ts.createSourceFile(
    file,
    readFileSync(path.join(root, file), 'utf8'),
    ts.ScriptTarget.ES2022,
    true,
    kind,
  );
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node) || ts.isTemplateLiteralToken(node) || ts.isJsxText(node)) {
      texts.push(node.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(parsed);
  return texts;
}

const everyText = ['shared-core', 'renderer', 'main'].flatMap((layer) =>
  readdirSync(path.join(root, layer), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .flatMap((file) => textsOf(`${layer}/${file.replaceAll('\\', '/')}`)),
);
/** Each once: a catalogue of translations holds the English sentences again. */
const texts = [...new Set(everyText)];
const having = (words: RegExp) =>
  texts.filter((text) => !text.startsWith('./') && words.test(text));

test('nothing is ever called safe', () => {
  expect(having(/\b(safe|safely|harmless|drinkable|no danger)\b/i)).toEqual([
    expect.stringMatching(/Nothing that comes out of this rig becomes drinkable/),
  ]);
});

test('nor is anything called so in German, or pure', () => {
  const german =
    /(?<!\p{L})(gefahrlos|ungefährlich|harmlos|unbedenklich|trinkbar|rein(e[mnrs]?)?)(?!\p{L})/iu;
  expect(having(german)).toEqual([expect.stringMatching(/Nichts, .* wird trinkbar/)]);
});

test('nothing but a substance in a sentence of physics is called pure', () => {
  expect(having(/\bpure\b(?! ethanol)/i)).toEqual([]);
  expect(having(/\bpur(er|est|ity|ified)\b(?!-against-recovery)/i)).toEqual([]);
});

test('no fraction is told to hold what harms', () => {
  expect(having(/\b(most|more|less) (volatile|harmful|poisonous)\b/i)).toEqual([]);
});

test('nobody is sent to a hot head with their hands', () => {
  expect(
    having(/mend the probe|check that the bulb|hold (the probe|it) still|push the bulb/i),
  ).toEqual([]);
});
