import { expect, test } from 'vitest';
import { chargeDoubtMl, defaultRunSettings, type RunSettings, studyRun } from '#shared-core';
import { potStrengthFromBalance } from '../../../shared-core/diagram/pot-from-balance.ts';
import { recoverySoFar } from '../../../shared-core/diagram/recovery-so-far.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { cylinderDoubt } from '../../../shared-core/run/charge-doubt.ts';
import { correctionSentences } from '../../../shared-core/run/correction.ts';
import { runSettingsSchema } from '../../../shared-core/run/run-settings.ts';
import { pearRun } from '../report/support/pear-run.ts';

const { run } = pearRun();
const { charge } = run.settings;
/** The same run, with the volume of its charge known to 12 mL. */
const roughly: RunSettings['charge'] = { ...charge, standardUncertaintyMl: 12 };
const plain = studyRun(run);
const rough = studyRun({ ...run, settings: { ...run.settings, charge: roughly } });

test('a record without a stated uncertainty of the volume opens, with that of a measuring cylinder', () => {
  const settings = runSettingsSchema.parse(defaultRunSettings);
  expect('standardUncertaintyMl' in settings.charge).toBe(false);
  expect(chargeDoubtMl(settings.charge)).toBeCloseTo(Math.hypot(0.5, 0.005 * 350), 9);
});

test('a stated uncertainty of the charge goes into recovery and balance as by hand', () => {
  const recovery = (study: typeof plain) => study.books.balance!.ethanol.recoveryPercent;
  expect(recovery(rough).value).toBeCloseTo(recovery(plain).value, 9);
  const addedShare = Math.sqrt(
    (12 / charge.volumeMl) ** 2 - (chargeDoubtMl(charge) / charge.volumeMl) ** 2,
  );
  expect(recovery(rough).standardUncertainty).toBeCloseTo(
    Math.hypot(recovery(plain).standardUncertainty, addedShare * recovery(plain).value),
    1,
  );
  const inG = (study: typeof plain) => study.books.balance!.total.inG;
  expect(inG(rough).standardUncertainty / inG(rough).value).toBeCloseTo(12 / charge.volumeMl, 3);
});

test('it stands in the report and in the keys', () => {
  const rows = reportOf([rough]).blocks.flatMap((block) =>
    block.kind === 'table' ? block.rows : [],
  );
  expect(rows.find(([name]) => name === 'Charge')?.[1]?.replaceAll(/\s/g, ' ')).toBe(
    '(250 ± 24) mL of (11.00 ± 0.40) % vol',
  );
  const working = exercisesOf(rough, 'school').find(({ id }) => id === 'school-recovery')?.working;
  expect(working?.join(' ')).toContain('The flask held ±24.0 mL and ±');
  const answer = (study: typeof plain) =>
    exercisesOf(study, 'undergraduate')
      .find(({ id }) => id === 'undergraduate-balance')
      ?.answer.quantities.find(({ of }) => of === 'U')?.value ?? 0;
  expect(answer(rough)).toBeGreaterThan(answer(plain) + 2);
});

test('it widens what is known of the pot and of the recovery while the run goes on', () => {
  const abv = { value: 90, low: 90, high: 90 };
  const course = [0, 20].map((volumeMl) => ({
    timeS: 30 * volumeMl,
    volumeMl,
    abv,
    stretch: null,
  }));
  const exact = { volumeMl: 250, strengthAbv: 11, standardUncertaintyAbv: 0 };
  const at = (standardUncertaintyMl: number) =>
    recoverySoFar(course, { ...exact, standardUncertaintyMl }).at(-1)!;
  // Of 20 mL the cylinder leaves as much in doubt as without a doubt of the charge; both add up as squares (k = 2).
  const { value } = at(0).recovery;
  const ofReceiver = value / at(0).recovery.low - 1;
  expect(ofReceiver).toBeCloseTo(
    2 * Math.hypot(cylinderDoubt.constantMl / 20, cylinderDoubt.share),
    9,
  );
  expect(at(12.5).recovery.low).toBeCloseTo(value / (1 + Math.hypot(0.1, ofReceiver)), 9);
  expect(at(12.5).recovery.high).toBeCloseTo(value / (1 - Math.hypot(0.1, ofReceiver)), 9);
  const pot = (standardUncertaintyMl: number) =>
    potStrengthFromBalance({ ...exact, standardUncertaintyMl }, at(0))!;
  // 20 mL of 90 % vol out of 275 mL of 11 % vol instead of 250 mL, by hand.
  const leftAbv = (chargedMl: number) => (chargedMl * 11 - 20 * 90) / (chargedMl - 20);
  expect(pot(12.5).high - pot(0).high).toBeCloseTo(leftAbv(275) - leftAbv(250), 0);
  expect(pot(12.5).low).toBeLessThan(pot(0).low);
});

test('a correction of the uncertainty alone is told as one', () => {
  expect(correctionSentences(run.settings, [{ charge: roughly, reason: 'by eye' }])[0]).toMatch(
    /standard uncertainty of the charge as usual for the volume and 0\.20 % vol → 12\.0 mL and 0\.20 % vol\. Reason: by eye$/,
  );
});
