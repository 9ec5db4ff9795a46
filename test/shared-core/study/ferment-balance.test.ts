import { expect, test } from 'vitest';
import { fermentBalance } from '../../../shared-core/study/ferment-balance.ts';

const origin = {
  strengthAbv: { low: 8.3, value: 9, high: 9.7 },
  sugarGPerL: { value: 150, standardUncertainty: 3 },
};

test('what became of the sugar of 2 L at 9 % vol is reckoned by hand', () => {
  const balance = fermentBalance(origin, 2000)!;
  // 92.138/180.156 of hexose is ethanol by Gay-Lussac; 7.893 g of it in a litre are one % vol at 20 °C (OIML R 22: 789.24 kg/m³).
  const share = (2 * 46.069) / 180.156;
  const perAbv = 7.8924;
  expect(balance.volumeMl).toBe(2000);
  expect(balance.sugarG.value).toBeCloseTo(300, 9);
  expect(balance.mostEthanolG.value).toBeCloseTo(300 * share, 1);
  expect(balance.ethanolG.value).toBeCloseTo(18 * perAbv, 1);
  expect(balance.carbonDioxideG.value).toBeCloseTo((18 * perAbv * 44.01) / 46.069, 1);
  expect(balance.turnedG.value).toBeCloseTo((18 * perAbv) / share, 0);
  expect(balance.yieldPercent.value).toBeCloseTo((100 * 9 * perAbv) / (150 * share), 1);
});

test('masses have the doubt of strength or sugar and 2 % of a bucket’s scale; their share has no doubt of the volume', () => {
  const { sugarG, ethanolG, carbonDioxideG, yieldPercent } = fermentBalance(origin, 2000)!;
  expect(sugarG.standardUncertainty).toBeCloseTo(2 * Math.hypot(3, 0.02 * 150), 9);
  // A 90 % interval of ± 0.7 % vol: 0.7/1.645.
  const strengthSd = 0.7 / 1.644854;
  const relative = Math.hypot(strengthSd / 9, 0.02);
  expect(ethanolG.standardUncertainty / ethanolG.value).toBeCloseTo(relative, 4);
  expect(carbonDioxideG.standardUncertainty / carbonDioxideG.value).toBeCloseTo(relative, 4);
  expect(yieldPercent.standardUncertainty / yieldPercent.value).toBeCloseTo(
    Math.hypot(strengthSd / 9, 3 / 150),
    3,
  );
});

test('the yield’s budget names what goes into it, and why', () => {
  const { yieldPercent } = fermentBalance(origin, 2000)!;
  expect(yieldPercent.budget.lines.map(({ name, reason }) => [name, reason])).toEqual([
    ['Strength', 'by the log [% vol]'],
    ['Sugar', 'as it began [g/L]'],
  ]);
});

test('without sugar that is known, or before anything has fermented, there is none', () => {
  expect(fermentBalance({ ...origin, sugarGPerL: null }, 2000)).toBeNull();
  const unfermented = { low: 0, value: 0, high: 0.4 };
  expect(fermentBalance({ ...origin, strengthAbv: unfermented }, 2000)).toBeNull();
});
