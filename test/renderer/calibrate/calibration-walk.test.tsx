// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { ProbeStatus } from '#shared-core';
import { CalibrationWalk } from '../../../renderer/calibrate/calibration-walk.tsx';
import { firstDraft, type PrepareDraft } from '../../../renderer/stores/prepare-draft.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const noProbe: ProbeStatus = {
  state: 'none',
  source: null,
  path: null,
  lastLine: null,
  channels: [],
  latest: [],
  readingsPerS: 0,
  rejectedLines: 0,
  droppedBytes: 0,
  problem: null,
  advice: null,
};

function walk(change: Partial<PrepareDraft>): { readonly baths: number; readonly words: string } {
  renderInWindow(<CalibrationWalk />, undefined, ({ prepare }) =>
    prepare.getState().replace({ ...firstDraft, ...change }),
  );
  const baths = screen.getAllByRole('listitem').length;
  const words = document.body.textContent ?? '';
  cleanup();
  return { baths, words };
}

test('with a barometer both baths are offered', () => {
  const { baths, words } = walk({ pressureFrom: 'barometer', stationPressure: '986' });
  expect([baths, words.includes('Steam, 99.2')]).toEqual([2, true]);
});

test('how hot steam is here is told as well as the air pressure is known', () => {
  const steam = (change: Partial<PrepareDraft>) =>
    /Steam, .*? at this air pressure/.exec(walk(change).words)?.[0].replaceAll('\u00a0', ' ');
  expect([
    steam({ pressureFrom: 'barometer', stationPressure: '986' }),
    steam({ altitudeM: '540' }),
  ]).toEqual([
    'Steam, 99.2 °C ± 0.1 K at this air pressure',
    // ± 1.9 kPa of weather, at 0.28 K/kPa near 98 °C (IAPWS).
    'Steam, 98.2 °C ± 0.6 K at this air pressure',
  ]);
});

test('while no probe is heard that is said, and nothing can be taken', () => {
  const { words } = walk({ pressureFrom: 'barometer', stationPressure: '986' });
  expect(words.match(/No probe is heard yet: connect it under “Probe”\./g)).toHaveLength(2);
  expect(words).not.toContain('Listening');
});

test('steam that tells the air pressure is no second bath of the same probe: ice alone is, and it is said why', () => {
  for (const steamReading of ['99.4', '']) {
    const { baths, words } = walk({ pressureFrom: 'steam', steamReading });
    expect(baths).toBe(1);
    expect(words).toContain('the same steam cannot tell what the probe is off by as well');
  }
});

test('where nobody knows the air pressure ice can be taken all the same', () => {
  for (const change of [{ pressureFrom: 'unknown' }, { altitudeM: '' }] as const) {
    const { baths, words } = walk(change);
    expect(baths).toBe(1);
    expect(words).toContain('For steam, enter the air pressure first');
  }
});

test('points are there again for whoever leaves Prepare and comes back, and are not told of another probe', () => {
  const point = { readingC: 0.41, standardUncertaintyK: 0.03, driftKPerMin: 0 };
  const calibrationPoints = { ice: point, steam: null, device: '10c4 ea60 0001' };
  const barometer = { pressureFrom: 'barometer', stationPressure: '986' } as const;
  const words = (device: string) => {
    renderInWindow(<CalibrationWalk />, undefined, ({ prepare, bench }) => {
      prepare.getState().replace({ ...firstDraft, ...barometer, calibrationPoints });
      bench.getState().dispatch({ type: 'probe', probe: { ...noProbe, state: 'hearing', device } });
    });
    const shown = document.body.textContent ?? '';
    cleanup();
    return shown;
  };
  expect(words('10c4 ea60 0001')).toContain('✓ taken: 0.41');
  expect(words('10c4 ea60 0001')).toContain('Use this correction');
  expect(words('10c4 ea60 0002')).not.toContain('✓ taken');
});
