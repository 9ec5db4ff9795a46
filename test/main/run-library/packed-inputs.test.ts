import { expect, test } from 'vitest';
import { createRandom, type RunInput } from '#shared-core';
import { createPackedInputs } from '../../../main/run-library/packed-inputs.ts';
import { readingQualitySchema } from '../../../shared-core/run/reading.ts';

test('what is kept comes back as it was and in its order, as often as it is gone through', () => {
  const random = createRandom('packed');
  const channels = ['head', 'pot', 'receiver', 'a-channel-of-its-own'] as const;
  const units = ['°C', 'g', 'mL', 'kPa'] as const;
  const one = <T>(of: readonly T[]) => of[Math.floor(random.uniform() * of.length)] as T;
  const inputs = Array.from({ length: 20_000 }, (_, index): RunInput => {
    const timeS = index / 7;
    if (index % 997 === 5) return { kind: 'mark', timeS, markId: index, mark: { type: 'heat-on' } };
    if (index % 1999 === 7) return { kind: 'link', timeS, state: 'lost', reason: 'unplugged' };
    const quality = one(readingQualitySchema.options);
    const value = 200 * random.uniform() - 50;
    return { kind: 'reading', timeS, channel: one(channels), value, unit: one(units), quality };
  });
  const packed = createPackedInputs();
  for (const input of inputs) packed.push(input);
  expect([...packed]).toEqual(inputs);
  expect(JSON.stringify([...packed])).toBe(JSON.stringify(inputs));
  expect([packed.count(), packed.page(4999, 7001)]).toEqual([20_000, inputs.slice(4999, 12_000)]);
  expect([packed.page(19_990, 99), packed.page(20_001, 9)]).toEqual([inputs.slice(19_990), []]);
  expect([...createPackedInputs()]).toEqual([]);
});
