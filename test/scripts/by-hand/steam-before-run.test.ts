import { expect, test } from 'vitest';
import { drawByHand } from '../../../scripts/by-hand/draw-by-hand.ts';
import { settingsWithSteam } from '../../../scripts/by-hand/steam-before-run.ts';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { scaleDoubts } from '../../../shared-core/probe/scale-doubts.ts';

const draws = Array.from({ length: 400 }, (_, index) => {
  const name = `steam/${index}`;
  return { name, draw: drawByHand(name) };
});
const limitC = (leastStrengthAbv: number, pressureKPa: number) =>
  limitTemperatureC({ leastStrengthAbv, pressureKPa });

test('a run whose pressure somebody knew is told what it was told', () => {
  const known = draws.filter(({ draw }) => draw.settings.pressure.source !== 'assumed');
  expect(known.length).toBeGreaterThan(200);
  for (const { name, draw } of known) {
    expect(settingsWithSteam({ name, settings: draw.settings })).toBe(draw.settings);
  }
});

test('steam places the limit on the run’s own probe within what is told of it, as often as two standard deviations should', () => {
  const unknown = draws.filter(({ draw }) => draw.settings.pressure.source === 'assumed');
  const within = unknown.map(({ name, draw }) => {
    const settings = settingsWithSteam({ name, settings: draw.settings });
    const { still, probe } = draw;
    const placedC = limitC(settings.leastStrengthAbv, settings.pressure.pressureKPa);
    const trueC = limitC(settings.leastStrengthAbv, still.pressureKPa) + probe.offsetK;
    const { temperatureUncertaintyK, pressureUncertaintyKPa } = scaleDoubts(settings);
    const toldK = 2 * Math.hypot(temperatureUncertaintyK, 0.28 * pressureUncertaintyKPa);
    return Math.abs(placedC - trueC) <= toldK;
  });
  expect(within.length).toBeGreaterThan(80);
  const share = within.filter(Boolean).length / within.length;
  expect(share).toBeGreaterThan(0.9);
});
