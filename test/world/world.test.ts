import { describe, expect, test } from 'vitest';
import { type Fault, shrinkFaults } from './fault.ts';
import { type PlantedFault, plantedFaults } from './planted-fault.ts';
import { runWorld } from './run-world.ts';

/** A few worlds of ten minutes each; the command runs any number. */
const seeds = 4;

const silence: Fault = { kind: 'probe-is-mute', fromS: 40, toS: 80 };
const order: Fault = { kind: 'viewer-gives-orders', fromS: 20, toS: 21 };

describe('a simulated world', () => {
  test('is the same to the last event when its seed is the same, and another for another seed', async () => {
    const once = await runWorld({ seed: 3, lengthS: 200 });
    const twice = await runWorld({ seed: 3, lengthS: 200 });
    const other = await runWorld({ seed: 4, lengthS: 200 });
    expect(twice).toEqual(once);
    expect(other.traceHash).not.toBe(once.traceHash);
  });

  test.each(Array.from({ length: seeds }, (_, index) => index + 1))(
    'keeps every promise in the world of seed %i',
    async (seed) => {
      expect((await runWorld({ seed })).violation).toBeNull();
    },
  );

  const quiet = { seed: 2, lengthS: 420, faults: [order, silence] };

  test.each(['clean', 'power-cut'] as const)(
    'keeps every promise where defects are planted below, before they are (%s end)',
    async (end) => {
      expect((await runWorld({ ...quiet, end })).violation).toBeNull();
    },
  );

  test.each(Object.entries(plantedFaults))(
    'finds the planted defect %s as a breach of %s',
    async (name, invariant) => {
      const planted = name as PlantedFault;
      const end = planted === 'sync-lies' ? 'power-cut' : 'clean';
      const outcome = await runWorld({ ...quiet, end, planted });
      expect(outcome.violation?.invariant).toBe(invariant);
    },
  );
});

describe('shrinkFaults', () => {
  test('leaves exactly the faults that a failure needs', async () => {
    const faults = Array.from({ length: 9 }, (_, index) => ({ ...silence, fromS: index }));
    const needs = [2, 7];
    const kept = await shrinkFaults(faults, async (fewer) =>
      needs.every((fromS) => fewer.some((fault) => fault.fromS === fromS)),
    );
    expect(kept.map(({ fromS }) => fromS)).toEqual(needs);
  });
});
