import { beforeAll, expect, test } from 'vitest';
import { equilibriumCurve, studyRun } from '#shared-core';
import { plateFigure } from '../../../shared-core/figures/plate-figure.ts';
import type { RunPlates } from '../../../shared-core/study/plates-of-run.ts';
import { pearRun } from '../report/support/pear-run.ts';
import { pathsOf, readOff, rounded, wordsOf } from './support/read-off.ts';

let plates: RunPlates;
beforeAll(() => {
  const study = studyRun(pearRun().run);
  if (study.plates === null) throw new Error('no plates');
  plates = study.plates;
});

test('the diagonal, the curve, pot, distillate and the steps between them are read off in mole fractions', () => {
  const drawing = plateFigure(plates, true);
  const read = readOff(drawing);
  const of = (widthPt: number, colour: string) =>
    pathsOf(drawing)
      .filter(({ stroke }) => stroke?.widthPt === widthPt && stroke.colour === colour)
      .map(({ points }) => rounded(points.map(read)));
  expect(of(0.8, '#4b4862')).toContainEqual([
    [0, 0],
    [1, 1],
  ]);
  const curve = equilibriumCurve(plates.pressureKPa);
  const [drawn = []] = of(1.3, '#17152b');
  expect(drawn).toEqual(rounded(drawn.map(([x = 0]) => [x, curve(x)])));
  expect([drawn[0], drawn.at(-1)]).toEqual([
    [0, 0],
    [1, 1],
  ]);
  const [pot, top] = [plates.potMoleFraction.value, plates.distillateMoleFraction.value];
  expect(of(0.9, '#882255')).toEqual(
    [pot, top].map((at) =>
      rounded([
        [at, 0],
        [at, at],
      ]),
    ),
  );
  expect(of(1.1, '#332288')).toEqual([
    rounded((plates.plates.diagram?.staircase ?? []).map(({ x, y }) => [x, y])),
  ]);
});

test('its axes, pot and distillate are named, and its words tell how many steps there are', () => {
  const words = (withSteps: boolean) =>
    wordsOf(plateFigure(plates, withSteps)).map(({ text }) => text);
  const { potMoleFraction, distillateMoleFraction, pressureKPa } = plates;
  expect(words(false)).toEqual(
    expect.arrayContaining([
      'Ethanol in the liquid / (mol/mol)',
      'Ethanol in the vapour / (mol/mol)',
      `pot ${potMoleFraction.value.toFixed(3)}`,
      `distillate ${distillateMoleFraction.value.toFixed(3)}`,
    ]),
  );
  const altTexts = [true, false].map((withSteps) => plateFigure(plates, withSteps).altText);
  const curve = `Equilibrium curve of ethanol and water at ${pressureKPa.toFixed(1)} kPa`;
  expect(altTexts).toEqual([
    `${curve}, with ${(plates.plates.stepped.value ?? 0).toFixed(1)} steps between pot and distillate.`,
    `${curve}, with pot and distillate marked.`,
  ]);
  expect(pathsOf(plateFigure(plates, false)).some(({ stroke }) => stroke?.widthPt === 1.1)).toBe(
    false,
  );
});
