import { Buffer } from 'node:buffer';
import { afterEach, expect, test } from 'vitest';
import { setLanguage } from '#shared-core';
import { problemWords } from '../../../renderer/words/problem-words.ts';
import { serviceProblemSchema } from '../../../shared-core/contract/service-problem.ts';
import { importTable, setUpSession, teacher } from '../support/session-bench.ts';

afterEach(() => setLanguage('en'));

/** As it crosses to a window, which has none of the memory of the process that made it. */
const crossed = (problem: unknown) =>
  serviceProblemSchema.parse(JSON.parse(JSON.stringify(problem)));

test('a table that is refused only when the whole of it was read says why in the language of the window', async () => {
  const { session } = await setUpSession();
  const refused = await importTable(session, Buffer.from('time_s;Mass\n0;1\n1;2\n'));
  if (refused.ok) throw new Error('It was taken in.');
  const problem = crossed(refused.error);
  expect(problemWords(problem)).toBe(
    'That could not be done: No head temperature column was found among "time_s", "Mass". Give one the title "head_degC" (°C).',
  );
  setLanguage('de');
  expect(problemWords(problem)).toMatch(
    /^Das ging nicht: Keine Spalte mit der Kopftemperatur wurde gefunden unter "time_s", "Mass"\. .*\.$/,
  );
});

test('what a request may not do is refused in the language of the window, whichever process refuses it', async () => {
  const { session } = await setUpSession();
  const asked = await Promise.all([
    session.handle('imports/add', { importId: 'import-9', base64: '' }, teacher),
    session.handle('ferments/withdraw', { fermentId: 'none-such', entryId: 1 }, teacher),
    session.handle('packs/read', { packId: 'gone', fromByte: 0 }, teacher),
  ]);
  setLanguage('de');
  const said = asked.map((answer) => (answer.ok ? 'done' : problemWords(crossed(answer.error))));
  for (const words of said) {
    expect(words).toMatch(/^Das ging nicht: /);
    expect(words).not.toMatch(/\b(?:the|is|no|longer|here|again|this)\b/i);
  }
});
