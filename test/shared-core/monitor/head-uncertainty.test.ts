import { describe, expect, test } from 'vitest';
import { createMonitor, defaultRunSettings } from '#shared-core';
import { lagTimeConstantS } from '../../../shared-core/probe/lag.ts';

const { standardUncertaintyK, lagT90S } = defaultRunSettings.probe;

/** The head as shown after five minutes of one reading a second on a steady ramp. */
function headOnRamp(slopeKPerS: number) {
  const monitor = createMonitor(defaultRunSettings);
  for (let timeS = 0; timeS <= 300; timeS++) {
    const value = 40 + slopeKPerS * timeS;
    monitor.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
  }
  return monitor.snapshot().head;
}

describe('the ± beside the head temperature', () => {
  test('is the stated uncertainty of the probe, twice, while the head holds', () => {
    const shown = headOnRamp(0)?.expandedUncertaintyK ?? Number.NaN;
    expect(shown).toBeGreaterThanOrEqual(2 * standardUncertaintyK);
    expect(shown).toBeLessThan(2 * standardUncertaintyK + 0.05);
  });

  test.each([0.1, -0.08])('covers what a probe trails behind a ramp of %d K/s', (slopeKPerS) => {
    const trailsK = lagTimeConstantS(lagT90S) * Math.abs(slopeKPerS);
    const shown = headOnRamp(slopeKPerS)?.expandedUncertaintyK ?? Number.NaN;
    const expected = 2 * Math.hypot(standardUncertaintyK, trailsK / Math.sqrt(3));
    expect(shown).toBeGreaterThan(trailsK);
    expect(shown / expected).toBeGreaterThan(0.9);
    expect(shown / expected).toBeLessThan(1.1);
  });
});
