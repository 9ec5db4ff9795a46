import { describe, expect, test } from 'vitest';
import { azeotrope, boilingDiagram, bubblePoint, OutOfRangeError } from '#shared-core';
import { boilingLiquidMoleFraction } from '../../../shared-core/diagram/boiling-liquid.ts';

describe('boilingDiagram', () => {
  test('bubble and dew curves meet at water, at the azeotrope and at ethanol, and nowhere else', () => {
    const points = boilingDiagram(99.4, 200);
    const x = azeotrope(99.4).ethanolMoleFraction;
    const width = (index: number) =>
      (points[index]?.vapourMoleFraction ?? 0) - (points[index]?.liquidMoleFraction ?? 0);
    expect(width(0)).toBe(0);
    expect(width(200)).toBe(0);
    for (let index = 1; index < 200; index++) {
      const liquid = points[index]?.liquidMoleFraction ?? 0;
      expect(Math.sign(width(index))).toBe(liquid < x ? 1 : -1);
    }
  });

  test('its coldest state is the azeotrope of that pressure', () => {
    for (const pressureKPa of [70, 101.325]) {
      const coldest = Math.min(
        ...boilingDiagram(pressureKPa, 400).map(({ temperatureC }) => temperatureC),
      );
      expect(coldest).toBeCloseTo(azeotrope(pressureKPa).temperatureC, 3);
    }
  });
});

describe('boilingLiquidMoleFraction', () => {
  test('gives back the liquid of every bubble point from water to the azeotrope', () => {
    const { ethanolMoleFraction: richest } = azeotrope(101.325);
    for (const share of [0, 0.001, 0.02, 0.2, 0.6, 0.95, 1]) {
      const x = share * richest;
      const state = bubblePoint({ ethanolMoleFraction: x, pressureKPa: 101.325 });
      const found = boilingLiquidMoleFraction({
        temperatureC: state.temperatureC,
        pressureKPa: 101.325,
      });
      // The curve is flat at the azeotrope: half a millikelvin there is a percent of ethanol.
      expect(Math.abs(found - x)).toBeLessThan(share > 0.9 ? 0.01 : 1e-6);
    }
  });

  test('stays at the azeotrope below it, at water above it, and refuses NaN', () => {
    const at = (temperatureC: number) =>
      boilingLiquidMoleFraction({ temperatureC, pressureKPa: 100 });
    expect([at(20), at(105)]).toEqual([azeotrope(100).ethanolMoleFraction, 0]);
    expect(() => at(Number.NaN)).toThrow(OutOfRangeError);
  });
});
