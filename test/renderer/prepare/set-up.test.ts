import { describe, expect, test } from 'vitest';
import { serialSourceSchema, setUpSchema } from '#shared-core';
import { settingsFromDraft } from '../../../renderer/draft/settings-from-draft.ts';
import { draftFromSetUp } from '../../../renderer/prepare/draft-from-set-up.ts';
import { setUpFromDraft } from '../../../renderer/prepare/set-up-from-draft.ts';
import { setUpWords } from '../../../renderer/prepare/set-up-words.ts';
import { firstDraft, type PrepareDraft } from '../../../renderer/stores/prepare-draft.ts';

const source = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' });

const lastLesson: PrepareDraft = {
  ...firstDraft,
  name: 'Pear, class 10',
  chargeVolumeMl: '420',
  chargeStrengthAbv: '8,5',
  rigDescription: 'Short column',
  plates: '5',
  heatW: '180',
  pressureFrom: 'barometer',
  stationPressure: '953,2',
  seaLevelPressure: '1016',
  altitudeM: '540',
  probeKind: 'platinum-a',
  correction: { offsetK: -0.31, gain: 1.002, standardUncertaintyK: 0.06 },
  correctionOf: '10c4 ea60 0001',
  leastStrengthAbv: '82',
  stopKind: 'purity-against-recovery',
  leastMeanStrengthAbv: '89',
  dripRateMlPerMin: '1,2',
  firstFractionKind: 'drops',
  firstFractionAmount: '40',
  reactionTimeS: '60',
  confirms: [{ check: 'attended', role: 'teacher' }],
};

describe('a set-up that comes back in the next lesson', () => {
  test('brings everything but the checks and the pressure of that day, in the person’s decimal sign', () => {
    const kept = setUpFromDraft(lastLesson, source);
    if (!kept.ok) throw new Error(JSON.stringify(kept.error));
    // As it comes back from the program, through the contract.
    const told = setUpSchema.parse(JSON.parse(JSON.stringify(kept.value)));
    expect(told.source).toEqual(source);
    expect(draftFromSetUp(told, lastLesson, ',')).toEqual({
      ...lastLesson,
      stationPressure: '',
      seaLevelPressure: '',
      confirms: [],
    });
  });

  test('asks for the barometer again before it can start, and for nothing else', () => {
    const kept = setUpFromDraft(lastLesson, null);
    const next = settingsFromDraft(
      draftFromSetUp(setUpSchema.parse(kept.ok && kept.value), lastLesson, '.'),
    );
    expect(next).toEqual({
      ok: false,
      error: [{ field: 'stationPressure', message: 'Needed: what it shows today.' }],
    });
  });

  test('that the pressure comes from steam is kept, what the probe showed in it is not', () => {
    const steam = {
      ...lastLesson,
      pressureFrom: 'steam',
      steamReading: '98,42',
      steamTaken: { standardUncertaintyK: 0.04, device: '10c4 ea60 0001' },
    } as const;
    const kept = setUpFromDraft(steam, source);
    const next = draftFromSetUp(setUpSchema.parse(kept.ok && kept.value), steam, ',');
    expect([next.pressureFrom, next.steamReading, next.steamTaken]).toEqual(['steam', '', null]);
    const settings = settingsFromDraft(next);
    expect(settings.ok ? [] : settings.error.map(({ field }) => field)).toEqual(['steamReading']);
  });

  test('with an altitude alone it needs no entry at all', () => {
    const kept = setUpFromDraft({ ...lastLesson, pressureFrom: 'altitude' }, null);
    const next = settingsFromDraft(
      draftFromSetUp(setUpSchema.parse(kept.ok && kept.value), lastLesson, '.'),
    );
    expect(next.ok && next.value).toMatchObject({
      pressure: { altitudeM: 540, source: 'altitude' },
      safetyConfirms: [],
    });
  });

  test('every kind of first fraction comes back', () => {
    for (const firstFractionKind of ['minutes', 'volume', 'drops'] as const) {
      const draft = { ...lastLesson, firstFractionKind, firstFractionAmount: '3' };
      const kept = setUpFromDraft(draft, null);
      expect(
        draftFromSetUp(setUpSchema.parse(kept.ok && kept.value), lastLesson, '.'),
      ).toMatchObject({
        firstFractionKind,
        firstFractionAmount: '3',
      });
    }
  });

  test('is not kept of a form that can’t be used, nor with the simulated still as its probe', () => {
    const wrong = setUpFromDraft({ ...lastLesson, chargeVolumeMl: 'much' }, source);
    expect(wrong).toMatchObject({ ok: false, error: [{ field: 'chargeVolumeMl' }] });
    const demo = { kind: 'demo', rig: 'glass-bead-column', timeScale: 60, seed: 1 } as const;
    const rehearsed = setUpFromDraft(lastLesson, demo);
    expect(rehearsed.ok && rehearsed.value.source).toBe(null);
  });

  test('an altitude that was never said stays unsaid', () => {
    const kept = setUpFromDraft({ ...lastLesson, altitudeM: '' }, null);
    expect(kept.ok && kept.value.altitudeM).toBe(null);
  });

  test('says in one line what it brings', () => {
    const kept = setUpFromDraft(lastLesson, source);
    expect(kept.ok && setUpWords(kept.value, '.').replaceAll('\u00a0', ' ')).toBe(
      'Pear, class 10 · 420 mL of 8.5 % vol · Short column · 5 plates · probe at /dev/ttyACM0, calibrated · heat off at 82 % vol',
    );
  });
});
