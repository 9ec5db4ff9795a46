import { describe, expect, test } from 'vitest';
import { cautionsAt, type MarkBody, markBodySchema, requests } from '#shared-core';
import { alarms } from '../../../shared-core/snapshot/alarm.ts';

const proof: Extract<MarkBody, { type: 'proof-burned' }> = {
  type: 'proof-burned',
  cut: 2,
  volumeMl: 1,
  seen: 'burned-away',
  role: 'teacher',
  confirmed: cautionsAt('proof').map(({ id }) => id),
};
const isTaken = (name: 'run/mark' | 'runs/book', mark: MarkBody) =>
  requests[name].body.safeParse(name === 'run/mark' ? { mark } : { runId: 'a', mark }).success;

describe('putting a prompt aside', () => {
  test('is refused where waiting can hurt somebody', () => {
    const refused = alarms.filter(
      (alarm) => !isTaken('run/mark', { type: 'alarm-shelved', alarm, forS: 300 }),
    );
    expect(refused).toEqual(['near-dryness', 'condenser-warm', 'attention']);
  });

  test('is no matter of any other mark, in the run or after it', () => {
    const inTheRun: readonly MarkBody[] = [
      { type: 'heat-off' },
      { type: 'alarm-acknowledged', alarm: 'near-dryness' },
      { type: 'alarm-shelved', alarm: 'retired-long-ago', forS: 300 },
      { type: 'liquid-mass', liquid: 'cut-1', massG: 12 },
    ];
    expect(inTheRun.map((mark) => isTaken('run/mark', mark))).toEqual(inTheRun.map(() => true));
    expect(isTaken('runs/book', { type: 'liquid-mass', liquid: 'cut-1', massG: 12 })).toBe(true);
  });

  test('is still read in logs that hold it', () => {
    const mark = { type: 'alarm-shelved', alarm: 'near-dryness', forS: 300 };
    expect(markBodySchema.safeParse(mark).success).toBe(true);
  });
});

describe('a sample burned as proof', () => {
  test('is kept after the run, never during it', () => {
    expect([isTaken('runs/book', proof), isTaken('run/mark', proof)]).toEqual([true, false]);
  });

  test('is refused while one condition is not confirmed, with more than 1 mL, or by an assistant', () => {
    const oneMissing = proof.confirmed.map((left) => ({
      ...proof,
      confirmed: proof.confirmed.filter((id) => id !== left),
    }));
    expect(oneMissing.map((mark) => isTaken('runs/book', mark))).toEqual(
      proof.confirmed.map(() => false),
    );
    expect(isTaken('runs/book', { ...proof, volumeMl: 1.1 })).toBe(false);
    expect(isTaken('runs/book', { ...proof, role: 'assistant' } as unknown as MarkBody)).toBe(
      false,
    );
  });
});
