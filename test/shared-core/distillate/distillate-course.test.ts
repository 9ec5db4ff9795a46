import { describe, expect, test } from 'vitest';
import type { Mark, MarkBody, RunInput } from '#shared-core';
import {
  distillateAt,
  distillateCourse,
  type RunToFollow,
} from '../../../shared-core/distillate/distillate-course.ts';

const even = (value: number) => ({ value, low: value - 2, high: value + 1 });
const at = (timeS: number, abv: number) => ({ timeS, abv: even(abv) });
const run = (changed: Partial<RunToFollow>): RunToFollow => ({
  inputs: [],
  arrivedS: 300,
  untilS: 1000,
  receivers: [{ toS: 1200, amount: null }],
  dripRateMlPerMin: null,
  strengths: [at(300, 80)],
  gone: [],
  ...changed,
});
const received = (timeS: number, value: number, unit: 'mL' | 'g' = 'mL'): RunInput => ({
  kind: 'reading',
  timeS,
  channel: 'receiver',
  value,
  unit,
  quality: 'good',
});
const marked = (...marks: readonly (readonly [number, MarkBody])[]): readonly Mark[] =>
  marks.map(([timeS, mark], index) => ({ kind: 'mark', timeS, markId: index + 1, mark }));
const volume = (value: number) => ({ by: 'volume', volumeMl: { value } }) as const;
const mass = (value: number) => ({ by: 'mass', massG: { value } }) as const;

/** Times and volumes up to where the sum is known. */
const known = (changed: Partial<RunToFollow>) => {
  const found = distillateCourse(run(changed));
  return (found?.points ?? [])
    .filter(({ timeS }) => timeS <= (found?.knownUntilS ?? 0))
    .map(({ timeS, volumeMl }) => [timeS, volumeMl]);
};
const near = (volumeMl: number, digits = 9) => expect.closeTo(volumeMl, digits);

describe('what a receiver that is measured all along gained', () => {
  test('counts once vapour has come; one whose reading falls was changed', () => {
    const inputs = [
      received(100, 3),
      received(400, 5),
      received(500, 9),
      received(600, 0),
      received(700, 2),
    ];
    expect(distillateCourse(run({ inputs }))).toMatchObject({
      basis: 'receiver-volume',
      knownUntilS: 700,
    });
    expect(known({ inputs })).toEqual([
      [300, 0],
      [400, 2],
      [500, 6],
      [600, 6],
      [700, 8],
    ]);
    const bad = inputs.map((input) => ({ ...input, quality: 'bad' }) as RunInput);
    for (const unusable of [[received(400, 5)], bad]) {
      expect(distillateCourse(run({ inputs: unusable }))?.basis).toBeNull();
    }
  });

  test('counts from when vapour came to when the heat was off, whatever it gains before and after and whatever else is measured', () => {
    const inputs = [
      received(100, 1),
      received(200, 3),
      received(300, 5),
      received(500, 9),
      received(1000, 12),
      received(1100, 14),
      received(1150, 15),
    ];
    const gained = [
      [300, 0],
      [500, 4],
      [1000, 7],
    ];
    expect(known({ inputs })).toEqual(gained);
    const head = inputs.flatMap((input): RunInput[] =>
      input.kind === 'reading'
        ? [input, { ...input, timeS: input.timeS + 1, channel: 'head', value: 78, unit: '°C' }]
        : [],
    );
    expect(known({ inputs: head })).toEqual(gained);
  });

  test('is not known before it was first read, and reckoned there by the flow while the heat was on', () => {
    const inputs = [
      received(500, 1),
      received(800, 7),
      received(1000, 11),
      received(1100, 13),
      received(1150, 14),
    ];
    // 10 mL in 500 s; a strength that was told meanwhile divides the time, and changes nothing.
    const found = distillateCourse(run({ inputs, strengths: [at(300, 80), at(650, 80)] }))!;
    expect([found.knownUntilS, found.strengths]).toEqual([300, { knownFromS: 300, knownToS: 650 }]);
    expect([500, 650, 800, 1000].map((timeS) => distillateAt(found, timeS))).toEqual([
      near(4),
      near(7),
      near(10),
      near(14),
    ]);
  });

  test('heard once more out of time counts nothing', () => {
    const inputs = [received(300, 0), received(400, 5), received(390, 9), received(500, 7)];
    expect(known({ inputs })).toEqual([
      [300, 0],
      [400, 5],
      [500, 7],
    ]);
  });

  test('flows evenly over the ten seconds between two drops, however often it is read', () => {
    const inputs = Array.from({ length: 16 }, (_, index) =>
      received(300 + 2 * index, Math.floor(index / 5)),
    );
    const found = distillateCourse(run({ inputs }))!;
    expect([305, 310, 315, 320, 325, 330].map((timeS) => distillateAt(found, timeS))).toEqual(
      [0.5, 1, 1.5, 2, 2.5, 3].map((volumeMl) => near(volumeMl)),
    );
  });

  test('is a mass over the density of what drips', () => {
    const inputs = [received(300, 0, 'g'), received(400, 8.594, 'g')];
    expect(distillateCourse(run({ inputs }))?.basis).toBe('receiver-mass');
    // 80 % vol are 859.4 kg/m³ at 20 °C (OIML R 22), 40 % vol 948.1 kg/m³.
    expect(known({ inputs }).at(-1)).toEqual([400, near(10, 1)]);
    expect(known({ inputs, strengths: [at(300, 40)] }).at(-1)).toEqual([400, near(9.064, 2)]);
  });

  test('counts no flicker of the last digit, no knock and no hand, and goes on from what stands there then', () => {
    const flicker = Array.from({ length: 701 }, (_, index) =>
      // 0.01 g a second, shown to a tenth, one digit up or down in turn.
      received(300 + index, Math.round(0.1 * index) / 10 + (index % 2 === 0 ? 0.1 : 0), 'g'),
    );
    const lastMl = (inputs: readonly RunInput[]) => known({ inputs }).at(-1)?.[1] ?? Number.NaN;
    // 7 g of 80 % vol, 859.4 kg/m³; a digit either way.
    expect(lastMl(flicker)).toBeGreaterThan(6.9 / 0.8594);
    expect(lastMl(flicker)).toBeLessThan(7.2 / 0.8594);
    const pressed = flicker.map((input, index) =>
      input.kind === 'reading' && index > 400 && index < 405
        ? { ...input, value: input.value + 55 }
        : input,
    );
    expect(lastMl(pressed)).toBeGreaterThan(6.7 / 0.8594);
    expect(lastMl(pressed)).toBeLessThan(7.2 / 0.8594);
  });
});

describe('what was written down of receivers', () => {
  test('just before one was taken away is all that it held, as the books have it', () => {
    const read = (timeS: number) =>
      known({
        inputs: marked(
          [timeS, { type: 'volume-read', volumeMl: 6 }],
          [700, { type: 'receiver-changed', volumeMl: null }],
          [1100, { type: 'volume-read', volumeMl: 2 }],
        ),
        receivers: [
          { toS: 700, amount: volume(6) },
          { toS: 1400, amount: volume(2) },
        ],
      });
    expect(read(660)).toEqual([
      [300, 0],
      [700, near(6)],
      [1000, near(8)],
    ]);
    expect(read(639).at(-1)).toEqual([639, near(6)]);
  });

  test('adds up, and what was read after the heat counts at its end', () => {
    const inputs = marked(
      [400, { type: 'volume-read', volumeMl: 4 }],
      [500, { type: 'receiver-changed', volumeMl: 6 }],
      [600, { type: 'mass-read', massG: 8.594 }],
      [700, { type: 'receiver-changed', volumeMl: null }],
      [800, { type: 'volume-read', volumeMl: 3 }],
      [900, { type: 'note', text: 'pear' }],
      [1200, { type: 'volume-read', volumeMl: 5 }],
      [1300, { type: 'volume-read', volumeMl: 5.5 }],
    );
    const receivers = [
      { toS: 500, amount: volume(6) },
      { toS: 700, amount: mass(8.594) },
      { toS: 1400, amount: volume(5.5) },
    ];
    const found = distillateCourse(run({ inputs, receivers }));
    // Nobody read the second again before it was taken away: what it held by then is not known.
    expect([found?.basis, found?.knownUntilS]).toEqual(['booked', 600]);
    expect(known({ inputs, receivers })).toEqual([
      [300, 0],
      [400, near(4)],
      [500, near(6)],
      [600, near(16, 1)],
    ]);
    // What each of the later ones gained is known all the same: 3 mL, and 2.5 mL until the heat was off.
    const volumeAt = (timeS: number) => distillateAt(found!, timeS);
    expect([volumeAt(800) - volumeAt(700), volumeAt(1000) - volumeAt(800)]).toEqual([
      near(3),
      near(2.5),
    ]);
  });

  test('ends with a receiver that was taken away unmeasured, until it is measured later', () => {
    const inputs = marked(
      [200, { type: 'receiver-changed', volumeMl: null }],
      [400, { type: 'volume-read', volumeMl: 4 }],
      [500, { type: 'receiver-changed', volumeMl: null }],
      [600, { type: 'receiver-changed', volumeMl: null }],
      [800, { type: 'volume-read', volumeMl: 3 }],
    );
    const receivers = [
      { toS: 200, amount: null },
      { toS: 500, amount: volume(4) },
      { toS: 600, amount: null },
      { toS: 900, amount: volume(3) },
    ];
    // Nothing can have been in the first.
    expect(known({ inputs, receivers })).toEqual([
      [300, 0],
      [400, 4],
    ]);
    const later = [
      { toS: 200, amount: null },
      { toS: 500, amount: volume(5) },
      { toS: 600, amount: volume(1.5) },
      { toS: 900, amount: volume(9) },
    ];
    expect(known({ inputs, receivers: later })).toEqual([
      [300, 0],
      [400, near(4)],
      [500, near(5)],
      [600, near(6.5)],
      [800, near(9.5)],
      [900, near(15.5)],
    ]);
  });

  test('says nothing came between two readings that are the same', () => {
    const inputs = marked(
      [400, { type: 'volume-read', volumeMl: 4 }],
      [600, { type: 'volume-read', volumeMl: 4 }],
      [800, { type: 'volume-read', volumeMl: 6 }],
    );
    expect(known({ inputs, receivers: [{ toS: 900, amount: volume(6) }] })).toEqual([
      [300, 0],
      [400, 4],
      [600, 4],
      [800, 6],
    ]);
  });

  test('does not make known what nobody measured before the heat was off, whatever the next receiver held', () => {
    const late = [1200, { type: 'volume-read', volumeMl: 2 }] as const;
    const changed = [1100, { type: 'receiver-changed', volumeMl: null }] as const;
    const next = { toS: 1300, amount: volume(2) };
    const never = {
      inputs: marked(changed, late),
      receivers: [{ toS: 1100, amount: null }, next],
    };
    expect(distillateCourse(run(never))?.basis).toBeNull();
    const once = {
      inputs: marked([400, { type: 'volume-read', volumeMl: 4 }], changed, late),
      receivers: [{ toS: 1100, amount: volume(4) }, next],
    };
    expect(known(once)).toEqual([
      [300, 0],
      [400, 4],
    ]);
    // What came later at the same strength is reckoned by these 4 mL alone.
    expect(distillateAt(distillateCourse(run(once))!, 1000)).toBeCloseTo(28, 9);
  });

  test('gives way to what was measured later: a slip at the still is no volume any more', () => {
    const inputs = marked(
      [400, { type: 'volume-read', volumeMl: 4 }],
      [500, { type: 'volume-read', volumeMl: 28 }],
    );
    expect(known({ inputs, receivers: [{ toS: 600, amount: volume(18) }] })).toEqual([
      [300, 0],
      [400, near(4)],
      [600, near(18)],
    ]);
  });

  test('never falls, and what stood there before vapour came counts with what followed', () => {
    const reads = (first: number) =>
      marked(
        [200, { type: 'volume-read', volumeMl: first }],
        [400, { type: 'volume-read', volumeMl: 4 }],
        [500, { type: 'volume-read', volumeMl: 3 }],
        [600, { type: 'volume-read', volumeMl: 5 }],
      );
    const receivers = [{ toS: 900, amount: volume(5) }];
    for (const first of [1, 9]) {
      expect(known({ inputs: reads(first), receivers })).toEqual([
        [300, 0],
        [400, 4],
        [600, 5],
      ]);
    }
  });

  test('makes a volume of a mass by the mean strength of all that it holds, as in the books', () => {
    const inputs = marked(
      [400, { type: 'mass-read', massG: 8.594 }],
      [600, { type: 'mass-read', massG: 8.594 + 9.481 }],
    );
    const strengths = [at(400, 80), at(401, 40)];
    const receivers = [{ toS: 900, amount: mass(8.594 + 9.481) }];
    const [, first, second] = known({ inputs, receivers, strengths }).filter(([timeS]) =>
      [300, 400, 600].includes(timeS!),
    );
    // 10 mL of 80 % vol at 859.4 kg/m³; with 10 mL of 40 % vol at 948.1 kg/m³ it is 60 % vol on average, at 909.1 kg/m³ (OIML R 22).
    expect([first?.[1], second?.[1]]).toEqual([near(10, 2), near((8.594 + 9.481) / 0.9091, 2)]);
  });
});

test('a drip rate is what came over on average while the heat was on', () => {
  expect(distillateCourse(run({ dripRateMlPerMin: 1.2 }))?.basis).toBe('drip-rate');
  expect(known({ dripRateMlPerMin: 1.2 })).toEqual([
    [300, 0],
    [1000, near(14)],
  ]);
  const receivers = [{ toS: 900, amount: volume(5) }];
  expect(distillateCourse(run({ receivers, dripRateMlPerMin: 1 }))?.basis).toBe('booked');
  expect(distillateCourse(run({ dripRateMlPerMin: 1.2, untilS: 300 }))).toBeNull();
  expect(distillateCourse(run({ strengths: [] }))).toBeNull();
});

describe('between two volumes an even heat', () => {
  const weak = [at(300, 90), at(649.999, 90), at(650, 50), at(1000, 50)];
  const receivers = [{ toS: 1000, amount: volume(20) }];
  const midMl = (changed: Partial<RunToFollow>) =>
    distillateAt(distillateCourse(run({ receivers, strengths: weak, ...changed }))!, 650);

  test('brings over equal moles, so fewer millilitres where they are weak', () => {
    /*
     * By hand from OIML R 22, g/mL at 20 °C: 90 % vol 0.82926, 50 % vol 0.93014; ethanol 0.78924.
     * Ethanol by mass 0.90 × 0.78924/0.82926 = 0.85657 and 0.50 × 0.78924/0.93014 = 0.42426; mL/mol with 46.068 and 18.015 g/mol:
     * 100 g of the first are 1.8593 + 0.7962 = 2.6555 mol and 120.59 mL, 45.41 mL/mol; of the second 0.9209 + 3.1959 = 4.1168 mol and 107.51 mL, 26.12 mL/mol.
     */
    expect(midMl({})).toBeCloseTo((20 * 45.41) / (45.41 + 26.12), 1);
    expect(midMl({ strengths: [at(300, 90)] })).toBeCloseTo(10, 9);
  });

  test('brings nothing over while no vapour reaches the head', () => {
    const strengths = [at(300, 90)];
    const gone = [{ fromS: 400, toS: 650 }];
    // 100 of 450 seconds with vapour.
    expect(midMl({ strengths, gone })).toBeCloseTo((20 * 100) / 450, 4);
    // A volume read meanwhile has come all the same.
    const inputs = marked([500, { type: 'volume-read', volumeMl: 3 }]);
    const all = distillateCourse(run({ receivers, strengths, gone, inputs }))!;
    expect(distillateAt(all, 500)).toBeCloseTo(3, 9);
    const twice = [...gone, { fromS: 700, toS: 900 }];
    // 100 of 250 seconds.
    expect(midMl({ strengths, gone: twice })).toBeCloseTo((20 * 100) / 250, 4);
    const throughout = [{ fromS: 0, toS: Number.POSITIVE_INFINITY }];
    expect(midMl({ strengths, gone: throughout })).toBeCloseTo(10, 6);
  });

  test('goes on, where nobody measured, as it flowed where somebody did', () => {
    const inputs = marked([600, { type: 'volume-read', volumeMl: 4 }]);
    const found = distillateCourse(run({ inputs }))!;
    expect(found.knownUntilS).toBe(600);
    // 4 mL in 300 s, then 400 s more at the same strength.
    expect(distillateAt(found, 1000)).toBeCloseTo(4 + (4 * 400) / 300, 9);
  });

  test('is all there is where nobody measured anything', () => {
    const found = distillateCourse(run({ strengths: weak }))!;
    expect([found.basis, found.knownUntilS]).toEqual([null, 300]);
    const [half, whole] = [distillateAt(found, 650), distillateAt(found, 1000)];
    expect(half / whole).toBeCloseTo(45.41 / (45.41 + 26.12), 2);
  });
});
