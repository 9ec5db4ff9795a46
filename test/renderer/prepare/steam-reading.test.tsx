// @vitest-environment happy-dom
import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { type ProbeStatus, saturationPressureKPa, serialSourceSchema } from '#shared-core';
import { settingsFromDraft } from '../../../renderer/draft/settings-from-draft.ts';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { PressureSection } from '../../../renderer/prepare/pressure-section.tsx';
import { stillToDo } from '../../../renderer/prepare/still-to-do.ts';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const path = '/dev/ttyACM0';

function shows(value: number, timeS: number): ProbeStatus {
  return {
    state: 'hearing',
    source: serialSourceSchema.parse({ kind: 'serial', path }),
    path,
    device: '10c4 ea60 0001',
    lastLine: String(value),
    channels: ['head'],
    latest: [{ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' }],
    readingsPerS: 1,
    rejectedLines: 0,
    droppedBytes: 0,
    problem: null,
    advice: null,
  };
}

function openSection(): WindowParts {
  let opened: WindowParts | null = null;
  renderInWindow(<PressureSection />, undefined, (parts) => {
    opened = parts;
  });
  fireEvent.click(screen.getByRole('radio', { name: 'Steam of boiling water, with this probe' }));
  if (opened === null) throw new Error('nothing was rendered');
  return opened;
}

function hear({ bench }: WindowParts, value: number, fromS: number): void {
  for (let timeS = fromS; timeS < fromS + 50; timeS += 1) {
    const probe = shows(value + 0.02 * (timeS % 2), timeS);
    act(() => bench.getState().dispatch({ type: 'probe', probe }));
  }
}

const seen = () => document.body.textContent?.replaceAll('\u00a0', ' ') ?? '';
const takeButton = () =>
  screen.getByRole<HTMLButtonElement>('button', { name: 'Take this reading' });
const entry = () =>
  screen.getByRole<HTMLInputElement>('textbox', { name: /What the probe shows in the steam/ });

test('a probe in steam settles, is taken by one press, and it is told what the reading is good for', () => {
  const parts = openSection();
  expect(seen()).toContain('Steam burns.');
  expect(seen()).toContain('Glass and mantle stay hot.');
  hear(parts, 99.41, 0);
  expect(seen()).toContain('Steady at 99.42 °C.');
  fireEvent.click(takeButton());
  expect(entry().value).toBe('99.42');
  expect(seen()).toContain('✓ taken: 99.42 °C ± 0.06 K');
  // Water boils at 99.42 °C at 99.3 kPa (IAPWS), 3.55 kPa a kelvin; the digital probe is known to √(0.29² + 0.17²) = 0.34 K.
  expect(seen()).toContain('Air pressure at the still: 99.3 kPa ± 2.4 kPa (k = 2)');
  expect(seen()).toContain('from the steam of boiling water; the largest doubt is the error of');
  expect(seen()).toContain('the limit as this very probe will show it is known to ± 0.4 K');
  const settings = settingsFromDraft(parts.prepare.getState().draft);
  expect(settings.ok && settings.value.pressure).toMatchObject({
    source: 'steam',
    altitudeM: null,
    steam: { shownC: 99.42, gapStandardUncertaintyK: 0.17 },
  });
});

test('a probe that stands in the room, or has not settled, cannot be taken for steam', () => {
  const parts = openSection();
  hear(parts, 21.4, 0);
  expect(seen()).toContain('the probe is not in this bath');
  expect(takeButton().disabled).toBe(true);
  act(() => parts.bench.getState().dispatch({ type: 'probe', probe: shows(98, 60) }));
  expect(takeButton().disabled).toBe(true);
});

test('without a probe it is said what to do, and the reading may be typed', () => {
  openSection();
  expect(seen()).toContain('No probe is heard yet');
  expect(screen.queryByRole('button', { name: 'Take this reading' })).toBeNull();
  fireEvent.change(entry(), { target: { value: '84' } });
  expect(seen()).toContain('84.0 °C is not the steam of boiling water');
  fireEvent.change(entry(), { target: { value: '98,6' } });
  const pressureKPa = saturationPressureKPa('water', 98.6).toFixed(1);
  expect(seen()).toContain(`Air pressure at the still: ${pressureKPa} kPa`);
  fireEvent.change(screen.getByRole('textbox', { name: /Altitude/ }), {
    target: { value: '1500' },
  });
  expect(seen()).toContain('reads too high by more than its ± 0.6 K');
});

test('a reading of another probe must be taken again before the run starts; one that was typed is nobody’s', () => {
  const parts = openSection();
  hear(parts, 99.41, 0);
  fireEvent.click(takeButton());
  const other = { ...shows(99.4, 60), device: '10c4 ea60 0002' };
  const asked = () =>
    stillToDo([], other, parts.prepare.getState().draft).map(({ words }) => words);
  expect(asked()).toContain('Take the steam’s reading again, with this probe');
  act(() => parts.bench.getState().dispatch({ type: 'probe', probe: other }));
  expect(seen()).toContain('The reading below was taken with another probe');
  fireEvent.change(entry(), { target: { value: '99.4' } });
  expect(asked()).not.toContain('Take the steam’s reading again, with this probe');
});

test('nothing is asked again where the pressure comes from elsewhere, or no probe is heard', () => {
  const steamTaken = { standardUncertaintyK: 0.03, device: '10c4 ea60 0002' };
  const draft = { ...firstDraft, steamReading: '99.4', steamTaken };
  const words = [
    stillToDo([], shows(99.4, 1), { ...draft, pressureFrom: 'altitude' }),
    stillToDo([], null, { ...draft, pressureFrom: 'steam' }),
  ].flatMap((list) => list.map((toDo) => toDo.words));
  expect(words.filter((one) => one.includes('steam'))).toEqual([]);
});
