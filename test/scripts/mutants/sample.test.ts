import { expect, test } from 'vitest';
import { parseMutantsOptions } from '../../../scripts/mutants/mutants-options.ts';
import { draw, strykerPlugins } from '../../../scripts/mutants/sample-plugin.mjs';
import { wilsonInterval } from '../../../scripts/mutants/wilson-interval.ts';

const ids = Array.from({ length: 200 }, (_, id) => String(id));

test('a seed draws the same mutants whatever order they are asked about in; another draws others', () => {
  const drawn = draw(ids, { count: 50, seed: 'one' });
  expect([
    drawn.size,
    draw(ids.toReversed(), { count: 50, seed: 'one' }),
    [...draw(ids, { count: 50, seed: 'two' })].every((id) => drawn.has(id)),
  ]).toEqual([50, drawn, false]);
  expect(draw(ids, { count: 500, seed: 'one' }).size).toBe(200);
});

test('each mutant is drawn about as often as each other', () => {
  // 400 draws of a quarter: 100 each, standard deviation √(400 · ¼ · ¾) = 8.7. Five of these are passed once in two million.
  const times = new Map(ids.map((id) => [id, 0]));
  for (let seed = 0; seed < 400; seed += 1)
    for (const id of draw(ids, { count: 50, seed: String(seed) }))
      times.set(id, (times.get(id) ?? 0) + 1);
  expect(Math.min(...times.values())).toBeGreaterThan(100 - 5 * 8.7);
  expect(Math.max(...times.values())).toBeLessThan(100 + 5 * 8.7);
});

test('the mutation tool is told in one answer which mutants to test', async () => {
  const checker = strykerPlugins[0]?.factory({ count: 1, seed: 'one' });
  const mutants = [{ id: 'a' }, { id: 'b' }, { id: 'c' }];
  expect(await checker?.group(mutants)).toEqual([['a', 'b', 'c']]);
  const answers = Object.values((await checker?.check(mutants)) ?? {});
  expect(answers.map(({ status }) => status).toSorted()).toEqual([
    'compileError',
    'compileError',
    'passed',
  ]);
});

test('the interval is that of the quadratic it solves: |share − p| = z √(p (1 − p) / n) at both ends', () => {
  for (const [hits, count] of [
    [81, 120],
    [1, 7],
    [219, 250],
  ] as const) {
    const { low, high } = wilsonInterval(hits, count);
    const away = (p: number) => Math.abs(hits / count - p) / Math.sqrt((p * (1 - p)) / count);
    expect([away(low), away(high)]).toEqual([expect.closeTo(1.96, 4), expect.closeTo(1.96, 4)]);
    expect(low).toBeLessThan(hits / count);
    expect(high).toBeGreaterThan(hits / count);
  }
});

test('none of ten says at most z² / (10 + z²), all of ten at least the rest', () => {
  expect([wilsonInterval(0, 10), wilsonInterval(10, 10)]).toEqual([
    { low: expect.closeTo(0, 12), high: expect.closeTo(0.27753, 4) },
    { low: expect.closeTo(0.72247, 4), high: expect.closeTo(1, 12) },
  ]);
});

test('the command takes a folder, and a sample of it with or without a seed', () => {
  const asked = (...words: readonly string[]) => parseMutantsOptions(words);
  expect([
    asked('main/rigs'),
    asked('main/rigs', '--sample', '20'),
    asked('--sample', '20', '--seed', 'x', 'main/rigs'),
  ]).toEqual(
    [null, { count: 20, seed: '1' }, { count: 20, seed: 'x' }].map((sample) => ({
      ok: true,
      value: { folder: 'main/rigs', isOwn: false, sample },
    })),
  );
  expect(asked('shared-core/monitor', '--own')).toEqual({
    ok: true,
    value: { folder: 'shared-core/monitor', isOwn: true, sample: null },
  });
  for (const wrong of [
    ['main/rigs', '--sample', '0'],
    ['main/rigs', '--seed', '2'],
    ['--sample', '5'],
    [],
  ])
    expect(asked(...wrong).ok).toBe(false);
});
