import { describe, expect, test } from 'vitest';
import {
  type Correction,
  correctedRun,
  correctedSettings,
  correctedStart,
  correctionSentences,
} from '../../../shared-core/run/correction.ts';
import { defaultRunSettings } from '../../../shared-core/run/default-run-settings.ts';

const charge = { ...defaultRunSettings.charge, volumeMl: 300, strengthAbv: 10 };
const pressure = { ...defaultRunSettings.pressure, pressureKPa: 98.6 };
const rig = { ...defaultRunSettings.rig, description: 'glass beads', plates: 3 };
const began = '2026-03-18T09:15:00.000Z';
const later = '2026-03-18T10:15:00.000Z';

/** What is said to have changed, without the words around it. */
const changes = (corrections: readonly Correction[], startedAtIso?: string) =>
  correctionSentences(defaultRunSettings, corrections, startedAtIso).map(
    (sentence) => /^Corrected after the run: (.*)\. Reason: misread$/.exec(sentence)?.[1],
  );

describe('the settings of a run put right', () => {
  test('are the last that was said of each part; what nobody corrected stays, and so does the record', () => {
    const recorded = structuredClone(defaultRunSettings);
    const corrections = [
      { charge, reason: 'misread' },
      { pressure, rig, reason: 'misread' },
      { charge: { ...charge, volumeMl: 310 }, reason: 'misread again' },
    ];
    expect(correctedSettings(recorded, corrections)).toEqual({
      ...defaultRunSettings,
      charge: { ...charge, volumeMl: 310 },
      pressure,
      rig,
    });
    expect(recorded).toEqual(defaultRunSettings);
  });
});

describe('the start of a run put right', () => {
  const corrections = [
    { startedAtIso: began, reason: 'an hour slow' },
    { startedAtIso: later, reason: 'two hours slow' },
    { charge, reason: 'misread' },
  ];

  test('is the last that was said of a run from a file; what this program recorded it timed itself', () => {
    expect(correctedStart({ startedAtIso: '', origin: 'imported' }, corrections)).toBe(later);
    expect(correctedStart({ startedAtIso: began, origin: 'recorded' }, corrections)).toBe(began);
  });

  test('is that of the record where nobody corrected it', () => {
    const onlyCharge = [{ charge, reason: 'misread' }];
    expect(correctedStart({ startedAtIso: began, origin: 'imported' }, onlyCharge)).toBe(began);
  });
});

describe('a correction in words', () => {
  test('names what it was, what it is now and why, one part after the other', () => {
    expect(changes([{ charge, pressure, rig, reason: 'misread' }])).toEqual([
      'charge 350 mL of 9 % vol → 300 mL of 10 % vol; air pressure 101.325 kPa → 98.6 kPa; ' +
        'rig not described, plates not known → glass beads, 3 plates',
    ]);
  });

  test('goes on from the correction before it', () => {
    const again = { ...charge, volumeMl: 310 };
    expect(
      changes([
        { charge, reason: 'misread' },
        { charge: again, reason: 'misread' },
      ]),
    ).toEqual([
      'charge 350 mL of 9 % vol → 300 mL of 10 % vol',
      'charge 300 mL of 10 % vol → 310 mL of 10 % vol',
    ]);
  });

  test('tells a start to the minute, or that none was stated, and does not repeat one that stays', () => {
    const corrections = [
      { startedAtIso: began, reason: 'misread' },
      { startedAtIso: later, reason: 'misread' },
      { startedAtIso: later, reason: 'misread' },
    ];
    expect(changes(corrections)).toEqual([
      'began at a time not stated → 2026-03-18 09:15 (UTC+00:00)',
      'began 2026-03-18 09:15 (UTC+00:00) → 2026-03-18 10:15 (UTC+00:00)',
      'nothing changed',
    ]);
  });

  test('tells the doubt of the charge in millilitres, or as the usual one', () => {
    const stated = { ...charge, standardUncertaintyMl: 4, standardUncertaintyAbv: 0.25 };
    expect(
      changes([
        { charge: stated, reason: 'misread' },
        { charge: { ...stated, standardUncertaintyMl: 6 }, reason: 'misread' },
      ]),
    ).toEqual([
      'charge 350 mL of 9 % vol → 300 mL of 10 % vol; standard uncertainty of the charge ' +
        'as usual for the volume and 0.50 % vol → 4.0 mL and 0.25 % vol',
      'standard uncertainty of the charge 4.0 mL and 0.25 % vol → 6.0 mL and 0.25 % vol',
    ]);
  });
});

test('a run with all its corrections has settings, start and sentences, the start in the zone of whoever reads it', () => {
  const run = { settings: defaultRunSettings, startedAtIso: began, origin: 'imported' } as const;
  const corrections = [{ pressure, startedAtIso: later, reason: 'misread' }];
  const inZone = (iso: string) =>
    iso.replace(/T(\d\d)(.*)Z$/, (_, hour, rest) => `T${Number(hour) + 1}${rest}+01:00`);
  expect(correctedRun(run, corrections, inZone)).toEqual({
    settings: { ...defaultRunSettings, pressure },
    startedAtIso: later,
    sentences: [
      'Corrected after the run: air pressure 101.325 kPa → 98.6 kPa; ' +
        'began 2026-03-18 10:15 (UTC+01:00) → 2026-03-18 11:15 (UTC+01:00). Reason: misread',
    ],
  });
  expect(correctedRun(run, corrections).sentences[0]).toContain('10:15 (UTC+00:00). Reason');
});
