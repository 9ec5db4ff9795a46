import { describe, expect, test } from 'vitest';
import {
  booksOfRun,
  defaultRunSettings,
  fail,
  type MarkBody,
  pearFermentSetup,
  simulateBatch,
  studyRun,
  succeed,
  teachingRigs,
} from '#shared-core';
import {
  ethanolMolarMassGPerMol,
  moleFractionFromMassFraction,
} from '../../../shared-core/alcoholometry/amount-fractions.ts';
import { balanceBatch } from '../../../shared-core/bookkeeping/balance-batch.ts';
import { bookLiquid } from '../../../shared-core/bookkeeping/book-liquid.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { pearRun } from '../report/support/pear-run.ts';

const readAtStart = { kind: 'reading', timeS: 0, quality: 'good' } as const;
type Valued = { readonly value: number };
const exactly = (value: number) => ({ value, standardUncertainty: 0 });

describe('the books of simulated runs', () => {
  const setups = [
    ['the pear ferment', pearFermentSetup()],
    ['a strong charge', { ...pearFermentSetup(), charge: { volumeMl: 400, strengthAbv: 20 } }],
    [
      'a still without packing',
      { ...pearFermentSetup(), rig: Object.values(teachingRigs)[0] ?? teachingRigs.wirePacking },
    ],
  ] as const;
  test.each(setups)('close to 0.1 per cent in mass and ethanol: %s', (_, setup) => {
    const { samples } = simulateBatch(
      {
        ...setup,
        // Packing that holds next to nothing, so that the bench can measure every vessel.
        rig: { ...setup.rig, column: { ...setup.rig.column, holdUpMl: 0.1 } },
        schedule: [
          ...(setup.schedule ?? []),
          { timeS: 1500, kind: 'receiver-changed' },
          { timeS: 3600, kind: 'heat-off' },
        ],
      },
      { durationS: 6000 },
    );
    const end = samples.at(-1);
    if (end === undefined) throw new Error('The simulation gave no samples.');
    const receivers = samples.flatMap((sample, index) =>
      samples[index + 1]?.receiverIndex === sample.receiverIndex ? [] : [sample.receiver],
    );
    const liquid = (name: string, volumeMl: number, strengthAbv: number) =>
      bookLiquid({
        name,
        amount: { by: 'volume', volumeMl: exactly(volumeMl), temperatureC: exactly(20) },
        strength: { by: 'stated', strengthAbv: exactly(strengthAbv) },
      });
    const cuts = receivers.map(({ volumeMl, strengthAbv }, index) =>
      liquid(`Cut ${index + 1}`, volumeMl, strengthAbv),
    );
    const residue = liquid('Residue', end.potVolumeMl, end.potStrengthAbv);
    // 0.1 mL, between pot and head in strength when the heat went off.
    const { headVapourStrengthAbv = 0, potStrengthAbv = 0 } = samples[3600] ?? {};
    const holdUp = liquid('Hold-up', 0.1, (headVapourStrengthAbv + potStrengthAbv) / 2);
    const { volumeMl, strengthAbv } = setup.charge;
    const charge = liquid('Charge', volumeMl, strengthAbv);
    const { total, ethanol } = balanceBatch({ charge, cuts, residue, holdUp });
    expect(Math.abs((total.closurePercent?.value ?? 0) - 100)).toBeLessThan(0.1);
    expect(Math.abs((ethanol.closurePercent?.value ?? 0) - 100)).toBeLessThan(0.1);

    // The same through the marks that a person makes in the window, charge from the settings.
    const measured = (name: string, ml: number, alcoholByVolume: number): readonly MarkBody[] => [
      { type: 'liquid-volume', liquid: name, volumeMl: ml, temperatureC: 20 },
      { type: 'liquid-strength', liquid: name, alcoholByVolume, temperatureC: 20 },
    ];
    const bodies = [
      ...receivers.flatMap((receiver, index) =>
        measured(`cut-${index + 1}`, receiver.volumeMl, receiver.strengthAbv),
      ),
      ...measured('residue', end.potVolumeMl, end.potStrengthAbv),
      ...measured('hold-up', 0.1, (headVapourStrengthAbv + potStrengthAbv) / 2),
    ];
    const { balance } = booksOfRun({
      settings: {
        ...defaultRunSettings,
        charge: { volumeMl, strengthAbv, standardUncertaintyAbv: 0.2 },
      },
      inputs: bodies.map((mark, index) => ({
        kind: 'mark',
        timeS: 6000,
        markId: index + 1,
        mark,
      })),
      verdicts: { estimates: [], events: [] },
      endS: 6000,
    });
    for (const substance of [balance?.total, balance?.ethanol]) {
      expect(Math.abs((substance?.closurePercent?.value ?? 0) - 100)).toBeLessThan(0.1);
      expect(substance?.closes).toBe(true);
    }
  });
});

describe('studyRun', () => {
  const { run, batch, receivers } = pearRun();
  const verdicts = analyseRun(run.settings, run.inputs, run.endS);
  const studied = () => studyRun(run, succeed(verdicts));

  test('finds the plateau within the probe’s uncertainty of where the simulated head was', () => {
    const study = studied();
    const span = study.plateau?.statistics.span ?? { fromS: 0, toS: 0 };
    const true_ = batch.samples.filter(({ timeS }) => timeS >= span.fromS && timeS <= span.toS);
    const trueC = true_.reduce((sum, sample) => sum + sample.bulbTemperatureC, 0) / true_.length;
    expect(span.toS - span.fromS).toBeGreaterThan(600);
    expect(Math.abs((study.plateau?.mean.value ?? 0) - trueC)).toBeLessThan(0.05);
    expect(study.plateau?.standard.value).toBeGreaterThan(study.plateau?.mean.value ?? 100);
  });

  test('books every cut as measured, and the ethanol in them as the simulator collected it', () => {
    const study = studied();
    expect(study.books.cuts.map(({ strengthFrom }) => strengthFrom)).toEqual(
      receivers.map(() => 'measured'),
    );
    const truthG = receivers.reduce(
      (sum, { ethanolMol }) => sum + ethanolMol * ethanolMolarMassGPerMol,
      0,
    );
    const booked = study.books.balance?.ethanol.cutsG;
    // Readings are rounded to 0.1 mL and 0.1 % vol.
    expect(Math.abs((booked?.value ?? 0) - truthG)).toBeLessThan(
      2 * (booked?.standardUncertainty ?? 0),
    );
    expect(study.books.balance?.ethanol.closes).toBe(true);
    expect(study.books.balance?.ethanol.closurePercent?.value).toBeGreaterThan(95);
  });

  test('gives a stronger product than the simple distillation beside it, by several stages', () => {
    const study = studied();
    expect(
      (study.product?.strengthAbv.value ?? 0) - (study.simple?.strengthAbv ?? 100),
    ).toBeGreaterThan(10);
    expect(study.plates?.plates.stepped.low ?? 0).toBeGreaterThan(2);
    const halfwayX = study.plates?.potMoleFraction;
    const trueX = batch.samples.find(
      (sample) =>
        sample.receiverIndex === 1 && sample.receiver.volumeMl >= (receivers[1]?.volumeMl ?? 0) / 2,
    )?.potEthanolMoleFraction;
    // The column's hold-up is not in the bench's balance, so the pot seems a little richer.
    expect(halfwayX?.value).toBeGreaterThan(trueX ?? 1);
    expect(halfwayX?.value).toBeLessThan(moleFractionFromMassFraction(0.0875));
  });

  test('says the same twice, to the last bit', () => {
    expect(JSON.stringify(studyRun(run))).toBe(JSON.stringify(studied()));
  });

  test('sets it beside what a bare still would give of the same moles, and counts what all cuts add up to', () => {
    const { simple, product, byVolume, books, verdicts: found, rows } = studied();
    expect(found).toBe(verdicts);
    expect(rows.length).toBeGreaterThan(4000);
    // 250 mL of 11 % vol: 27.5 mL of ethanol; a simple distillation to as many moles gives some of it, weaker.
    expect(simple?.strengthAbv).toBeLessThan(product?.strengthAbv.low ?? 0);
    expect(product?.massG.value).toBeCloseTo(
      books.cuts.reduce((sum, { booked }) => sum + (booked?.massG.value ?? 0), 0),
      9,
    );
    expect(byVolume).not.toBeNull();
    // As many moles over, and none of its ethanol lost: F·z = D·y + (F − D)·x, masses over 46.069 and 18.015 g/mol.
    const molOf = (liquid: { readonly massG: Valued; readonly ethanolG: Valued } | null) =>
      liquid === null
        ? Number.NaN
        : liquid.ethanolG.value / 46.069 + (liquid.massG.value - liquid.ethanolG.value) / 18.015;
    const [chargeMol, distillateMol] = [molOf(books.charge), molOf(product)];
    const { distillateMoleFraction = 0, residueMoleFraction = 0, recoveryPercent } = simple ?? {};
    const overMol = distillateMol * distillateMoleFraction;
    const chargedMol = books.charge.ethanolG.value / 46.069;
    expect(overMol + (chargeMol - distillateMol) * residueMoleFraction).toBeCloseTo(chargedMol, 4);
    expect(recoveryPercent).toBeCloseTo((100 * overMol) / chargedMol, 2);
  });

  test.each([
    ['a charge that holds next to nothing', 0.2, 20, false],
    ['a weak charge', 1, 20, true],
    ['a charge that no still makes much stronger', 95, 20, false],
    ['a strong charge', 90, 20, true],
    ['more than nine tenths of the charge', 10, 288, false],
    ['less than nine tenths of it', 10, 200, true],
    ['an empty receiver', 10, 0, false],
  ])(
    'has a bare still beside it where the two can be compared: %s',
    (_, strengthAbv, cutMl, isThere) => {
      const marks: readonly MarkBody[] = [
        { type: 'receiver-changed', volumeMl: null },
        { type: 'liquid-volume', liquid: 'cut-1', volumeMl: cutMl, temperatureC: 20 },
        { type: 'liquid-label', liquid: 'cut-1', alcoholByVolume: 10 },
      ];
      const { simple } = studyRun({
        ...run,
        settings: {
          ...defaultRunSettings,
          charge: { volumeMl: 300, strengthAbv, standardUncertaintyAbv: 0.1 },
        },
        inputs: marks.map((mark, index) => ({ kind: 'mark', timeS: 50, markId: index + 1, mark })),
        lateMarks: [],
        entries: undefined,
        endS: 60,
      });
      expect(simple !== null).toBe(isThere);
    },
  );

  test('is counted by volume from receivers measured after the run, up to the first that was not', () => {
    const inputs = run.inputs.flatMap((input): typeof run.inputs => {
      if (input.kind !== 'mark') return [input];
      if (input.mark.type === 'volume-read') return [];
      return input.mark.type === 'receiver-changed'
        ? [{ ...input, mark: { ...input.mark, volumeMl: null } }]
        : [input];
    });
    const amountOf = (volumeMl: number) =>
      ({
        by: 'volume',
        volumeMl: { value: volumeMl, standardUncertainty: 0.5 },
        temperatureC: { value: 20, standardUncertainty: 0.5 },
      }) as const;
    const measured = (known: number) =>
      studyRun(
        {
          ...run,
          inputs,
          entries: {
            cuts: receivers.map(({ volumeMl, strengthAbv }, index) => ({
              number: index + 1,
              ...(index < known && { amount: amountOf(volumeMl) }),
              strength: {
                by: 'stated' as const,
                strengthAbv: { value: strengthAbv, standardUncertainty: 0.3 },
              },
            })),
          },
        },
        succeed(verdicts),
      ).byVolume?.collected?.volumeMl;
    const all = measured(receivers.length);
    const collectedMl = receivers.reduce((sum, { volumeMl }) => sum + volumeMl, 0);
    expect(all).toBeCloseTo(collectedMl, 6);
    const lastMl = receivers.at(-1)?.volumeMl ?? 0;
    expect(measured(receivers.length - 1)).toBeCloseTo(collectedMl - lastMl, 6);
    expect(measured(0)).toBeUndefined();
  });

  test('knows nothing of the main fraction of a run that nothing judged, and says why', () => {
    const { unjudged, mainFraction, verdicts } = studyRun(run, fail('The monitor failed.'));
    expect([unjudged, mainFraction]).toEqual(['The monitor failed.', null]);
    expect(verdicts.verdict).toEqual({ mainFraction: false, because: 'The monitor failed.' });
    expect([studied().unjudged, studied().mainFraction]).toEqual([null, 'yes']);
  });

  test('judges a table of volumes by them, without rows or times', () => {
    const table = [1, 2, 3].flatMap((volumeMl): typeof run.inputs => [
      { ...readAtStart, channel: 'receiver', value: volumeMl, unit: 'mL' },
      { ...readAtStart, channel: 'head', value: 80 + volumeMl, unit: '°C' },
    ]);
    const study = studyRun({ ...run, inputs: table, lateMarks: [], entries: undefined, endS: 0 });
    expect(study.byVolume?.basis).toBe('table');
    expect(study.rows).toEqual([]);
    expect(study.verdicts.stages).toEqual([]);
    expect(study.verdicts.verdict.because).toBe(study.byVolume?.verdict.because);
    // What the monitor makes of it, or fails to, has no say in that.
    const failed = studyRun(
      { ...run, inputs: table, lateMarks: [], entries: undefined, endS: 0 },
      fail('The monitor failed.'),
    );
    expect([failed.unjudged, failed.mainFraction]).toEqual([null, study.mainFraction]);
    expect(failed.verdicts).toEqual(study.verdicts);
  });

  test('without any mark of a volume there are rows and a plateau, but no books', () => {
    const bare = studyRun({
      ...run,
      inputs: run.inputs.filter(({ kind }) => kind === 'reading'),
      entries: undefined,
    });
    expect([bare.books.balance, bare.product, bare.simple]).toEqual([null, null, null]);
    expect(bare.plateau).not.toBeNull();
    expect(bare.plates?.basis).toMatch(/head vapour/);
  });
});

test('simple and fractional runs are set against each other where the kinds differ', () => {
  const { run } = pearRun();
  const withPlates = (plates: number | null) =>
    studyRun({ ...run, settings: { ...run.settings, rig: { ...run.settings.rig, plates } } });
  const words = (studies: readonly ReturnType<typeof withPlates>[]) =>
    JSON.stringify(reportOf(studies).blocks.slice(0, 11));
  const [simple, fractional] = [withPlates(0), withPlates(6)];
  expect(words([simple, fractional])).toMatch(
    /Simple \(run 1\) gave \d\d\.\d+–\d\d\.\d+.% vol, fractional \(run 2\)/,
  );
  expect(words([simple, fractional])).toContain('"simple, no column","fractional, 6 plates"');
  expect(words([withPlates(1), fractional])).toContain(
    '"fractional, 1 plate","fractional, 6 plates"',
  );
  expect(words([fractional, withPlates(null)])).not.toMatch(/Simple \(run/);
  expect(words([{ ...fractional, imported: true, rehearsal: false }, fractional])).toContain(
    '"Readings","imported","rehearsal"',
  );
});
