import { expect, test } from 'vitest';
import { createPowerOnScreen } from '#shared-core';
import type { ChannelValue } from '../../../shared-core/frame/to-channel-value.ts';

const at = (value: number, other: Partial<ChannelValue> = {}): ChannelValue => ({
  channel: 'head',
  value,
  unit: '°C',
  quality: 'good',
  doubt: null,
  ...other,
});

function screened(...values: readonly ChannelValue[]): readonly ChannelValue[] {
  const { screen } = createPowerOnScreen();
  return values.map((value) => screen(value));
}

const doubtsOf = (...values: readonly ChannelValue[]) =>
  screened(...values).map(({ doubt }) => doubt);

test('an exact 85 °C at first is suspect and says why; whatever else is heard passes unchanged', () => {
  expect(screened(at(85), at(21.5))).toEqual([
    at(85, { quality: 'suspect', doubt: 'power-on-value' }),
    at(21.5),
  ]);
});

test('85 °C stays suspect until something else has been heard', () => {
  expect(doubtsOf(at(85), at(85), at(84.9), at(85))).toEqual([
    'power-on-value',
    'power-on-value',
    null,
    null,
  ]);
});

test.each([82, 83.5, 86.5, 88])('85 °C that is reached from %d °C is a reading', (before) => {
  expect(doubtsOf(at(before), at(85), at(85))).toEqual([null, null, null]);
});

test.each([-20, 21.5, 81.9, 88.1, 140])('85 °C after a jump from %d °C is suspect', (before) => {
  expect(doubtsOf(at(before), at(85))).toEqual([null, 'power-on-value']);
});

test('each channel is judged by what it has said itself', () => {
  expect(doubtsOf(at(84, { channel: 'pot' }), at(85), at(85, { channel: 'pot' }))).toEqual([
    null,
    'power-on-value',
    null,
  ]);
});

test('what is no temperature, or is bad already, is neither doubted nor believed', () => {
  const mass = at(85, { channel: 'receiver', unit: 'g' });
  const bad = at(84, { quality: 'bad', doubt: 'outside-range' });
  expect(screened(mass, bad, at(85))).toEqual([
    mass,
    bad,
    at(85, { quality: 'suspect', doubt: 'power-on-value' }),
  ]);
});
