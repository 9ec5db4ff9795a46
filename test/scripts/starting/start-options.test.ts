import { expect, test } from 'vitest';
import { parseStartOptions } from '../../../scripts/starting/start-options.ts';

test('without arguments a window opens on a free port', () => {
  expect(parseStartOptions([])).toEqual({
    ok: true,
    value: { open: true, port: 0, runsFolder: null, browser: false, help: false },
  });
});

test('every option is read', () => {
  expect(
    parseStartOptions(['--no-open', '--port', '4100', '--runs-folder', '/tmp/a b', '--browser']),
  ).toEqual({
    ok: true,
    value: { open: false, port: 4100, runsFolder: '/tmp/a b', browser: true, help: false },
  });
});

test.each([
  [['--port', 'many'], '--port needs a whole number from 0 to 65535, not "many".'],
  [['--port', '70000'], '--port needs a whole number from 0 to 65535, not "70000".'],
  [['--port=-1'], '--port needs a whole number from 0 to 65535, not "-1".'],
  [['--runs-folder='], '--runs-folder needs a folder.'],
])('%j is refused in one sentence', (commandLine, error) => {
  expect(parseStartOptions(commandLine)).toEqual({ ok: false, error });
});

test('an unknown option or a stray word is refused by name', () => {
  expect([parseStartOptions(['--prot', '1']), parseStartOptions(['demo'])]).toEqual([
    { ok: false, error: expect.stringContaining('--prot') },
    { ok: false, error: expect.stringContaining('demo') },
  ]);
});
