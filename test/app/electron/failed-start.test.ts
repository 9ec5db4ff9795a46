import { expect, test } from 'vitest';
import { type FailedStartDeps, sayWhyNot } from '../../../app/electron/failed-start.ts';

function bench(response: number, makeReport: FailedStartDeps['makeReport']) {
  const calls: unknown[] = [];
  const deps = {
    dialog: {
      showMessageBox: async ({ detail, buttons }: { detail: string; buttons: string[] }) => {
        calls.push(detail, buttons);
        return { response };
      },
      showSaveDialog: async () => ({ filePath: '/a/report.json' }),
    },
    makeReport,
    saveFile: async (at: string, text: string) => void calls.push(['saved', at, text]),
    exit: (code: number) => void calls.push(['exit', code]),
  };
  return { calls, deps: deps as unknown as FailedStartDeps };
}

test('a failed start says why, shows the report before it is saved, and ends the program', async () => {
  const { calls, deps } = bench(1, async (because) => `{"what":"${because}"}`);
  await sayWhyNot(new Error('no disk'), deps);
  expect(calls).toEqual([
    'no disk\n\nFor whoever mends this program:\n{"what":"no disk"}',
    ['Close', 'Save this report …'],
    ['saved', '/a/report.json', '{"what":"no disk"}'],
    ['exit', 1],
  ]);
});

test('without a yes nothing is saved', async () => {
  const { calls, deps } = bench(0, async () => '{}');
  await sayWhyNot(new Error('no disk'), deps);
  expect(calls.at(-1)).toEqual(['exit', 1]);
  expect(calls).toHaveLength(3);
});

test('where no report can be made either, it says why all the same', async () => {
  const { calls, deps } = bench(0, async () => Promise.reject(new Error('neither')));
  await sayWhyNot('no disk', deps);
  expect(calls).toEqual(['no disk', ['Close'], ['exit', 1]]);
});
