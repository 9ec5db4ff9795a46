import { expect, test } from 'vitest';
import type { MarkBody, RunSettings } from '#shared-core';
import { booksOf, chargedSettings, marks } from './support/books-of.ts';

test('a strength by the head says what of the probe and of the air pressure nobody stated, unless the run came to know it', () => {
  const estimates = [{ timeS: 20, headVapourAbv: { value: 90, low: 88, high: 92 } }];
  const cutOf20Ml = marks({ type: 'heat-on' }, { type: 'receiver-changed', volumeMl: 20 }).map(
    (mark) => ({ ...mark, timeS: 30 * mark.timeS }),
  );
  const assumed = (probe: Partial<RunSettings['probe']>, read: readonly MarkBody[] = []) =>
    booksOf({
      settings: { ...chargedSettings, probe: { ...chargedSettings.probe, ...probe } },
      inputs: [
        ...cutOf20Ml,
        ...read.map((mark) => ({ kind: 'mark' as const, timeS: 40, markId: 9, mark })),
      ],
      verdicts: { estimates, events: [] },
    }).assumptions.filter((sentence) => sentence.startsWith('Nobody stated'));
  const pressure = 'Nobody stated the air pressure: 101 kPa ± 12 kPa is assumed.';
  const kind = { assumed: ['probe-kind' as const] };
  expect([
    assumed({}),
    assumed({}, [{ type: 'pressure-read', pressureKPa: 98 }]),
    assumed(kind, [{ type: 'pressure-read', pressureKPa: 98 }]),
    assumed({ ...kind, offsetK: 0.2, standardUncertaintyK: 0.05 }),
    booksOf({ settings: { ...chargedSettings, probe: { ...chargedSettings.probe, ...kind } } })
      .assumptions,
  ]).toEqual([
    [pressure],
    [],
    ['Nobody stated the kind of probe: one right to ± 0.5 K that follows within 15 s is assumed.'],
    [pressure, 'Nobody stated the kind of probe: one that follows within 15 s is assumed.'],
    [],
  ]);
});
