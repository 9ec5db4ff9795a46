import { describe, expect, test } from 'vitest';
import { createMonitor, defaultRunSettings } from '#shared-core';
import { bandOnProbe } from '../../../renderer/strip/band-on-probe.ts';
import { probeScaleWords } from '../../../renderer/words/index.ts';
import { snapshotSchema } from '../../../shared-core/snapshot/snapshot.ts';

const band = {
  pressureKPa: 98.6,
  pressureStandardUncertaintyKPa: 0.1,
  azeotropeC: 77.53,
  limitC: 82.96,
  leastStrengthAbv: 80,
  probeReadsHighK: 0.61,
  probeReadsHighRangeK: { low: -0.3, high: 1.4 },
};

describe('bandOnProbe', () => {
  test('the band stands where the probe shows it, exactly where its labels say', () => {
    expect(bandOnProbe(band)).toEqual({ ...band, azeotropeC: 78.1, limitC: 83.6 });
  });

  test('before vapour nothing is told of how far the probe is off, and the band stands where the air pressure puts it', () => {
    const monitor = createMonitor({ ...defaultRunSettings, attentionCheckS: null });
    for (let timeS = 0; timeS < 300; timeS += 1) {
      const value = 20;
      monitor.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
    }
    const { plateau } = monitor.advanceTo(300);
    expect(plateau).toMatchObject({ probeReadsHighK: 0, probeReadsHighRangeK: null });
    expect(probeScaleWords(plateau, '.')).toBe(null);
    expect(bandOnProbe(plateau).azeotropeC).toBeCloseTo(plateau.azeotropeC, 1);
  });

  test('strip and words name one limit: the one of the monitor, on the probe', () => {
    const monitor = createMonitor({ ...defaultRunSettings, attentionCheckS: null });
    // Room, a steep front, then a head that holds 1 K above any plateau of the default pressure.
    for (let timeS = 0; timeS < 1800; timeS += 1) {
      const value = timeS < 600 ? 20 : Math.min(79.6, 20 + (timeS - 600));
      monitor.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
    }
    const { plateau, stage } = monitor.advanceTo(1800);
    const { low, high } = plateau.probeReadsHighRangeK ?? { low: 0, high: 0 };
    expect(low).toBeLessThan(plateau.probeReadsHighK);
    expect(high).toBeGreaterThan(plateau.probeReadsHighK);
    const limit = `${bandOnProbe(plateau).limitC.toFixed(1)} °C`;
    expect(`${stage.because} ${stage.wouldChangeIf}`).toContain(limit);
    expect(probeScaleWords(plateau, '.')?.because).toContain(limit.replace(' ', '\u00a0'));
  });
});

test('a snapshot recorded before probes were told apart from the truth is read as of a true probe', () => {
  const { plateau, ...rest } = JSON.parse(
    JSON.stringify(createMonitor(defaultRunSettings).advanceTo(1)),
  );
  const { probeReadsHighK: _, probeReadsHighRangeK: __, ...older } = plateau;
  const read = snapshotSchema.parse({ ...rest, plateau: older });
  expect(read.plateau).toEqual({ ...older, probeReadsHighK: 0, probeReadsHighRangeK: null });
});

describe('probeScaleWords', () => {
  test('says how far the probe is off and gives both limits', () => {
    expect(probeScaleWords(band, ',')).toEqual({
      finding: 'reads about 0,6\u00a0K high',
      range: 'between 0,3\u00a0K low and 1,4\u00a0K high',
      because:
        "Vapour of 80\u00a0% vol condenses at 83,0\u00a0°C at 98,6\u00a0kPa; this probe then shows 83,6\u00a0°C. How far it is off, together with the air pressure entered, is learned while the head holds. The band on the strip, the limit and the prompts are on the probe's scale.",
    });
  });

  test('a probe of which the run has shown no direction is told to be true within its range', () => {
    const undecided = { probeReadsHighK: 0.1, probeReadsHighRangeK: { low: -0.9, high: 0.8 } };
    expect(probeScaleWords({ ...band, ...undecided }, '.')).toMatchObject({
      finding: 'true within 0.9\u00a0K',
      range: 'with the air pressure, as far as this run shows',
    });
  });

  test('a probe that is off by less than what is shown needs no word', () => {
    expect(probeScaleWords({ ...band, probeReadsHighK: -0.04 }, '.')).toBe(null);
  });
});
