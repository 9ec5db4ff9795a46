import { fail, type Result, succeed } from '../result/index.ts';
import { type Channel, measuredBy, type ReadingQuality, type ReadingUnit } from '../run/index.ts';
import { celsiusFrom } from './celsius-from.ts';
import type { LineRejection, RawValue } from './raw-value.ts';
import type { SerialSource } from './serial-source.ts';

/** A value with its channel, in the unit readings are kept in. */
export interface ChannelValue {
  readonly channel: Channel;
  readonly value: number;
  readonly unit: ReadingUnit;
  readonly quality: ReadingQuality;
  /** Why the quality is not good; null when it is. */
  readonly doubt: ValueDoubt | null;
}

export type ValueDoubt = 'sensor-disconnected' | 'outside-range' | 'power-on-value';

interface Plausible {
  readonly unit: ReadingUnit;
  readonly low: number;
  readonly high: number;
}

/**
 * What each channel can be. −55 … 125 °C is the span of the common one-wire digital sensor and
 * Pt100 probes in teaching labs reach a little further, hence 150 °C. The others are generous on
 * purpose (common practice, no source): they catch broken lines, not surprising weather.
 */
const plausible = {
  temperature: { unit: '°C', low: -55, high: 150 },
  mass: { unit: 'g', low: -100, high: 50_000 },
  volume: { unit: 'mL', low: 0, high: 50_000 },
  pressure: { unit: 'kPa', low: 50, high: 115 },
  other: { unit: '1', low: -1e9, high: 1e9 },
} as const satisfies Readonly<Record<string, Plausible>>;

const measured: ReadonlyMap<string, 'temperature' | 'amount' | 'pressure'> = new Map(
  Object.entries(measuredBy),
);

/** What the digital one-wire sensor's common driver reports when no sensor answers (from memory). */
const disconnectedC = -127;

/**
 * Gives a raw number its channel's unit and says whether it can be true.
 *
 * A temperature without a unit of its own takes `unit`, the person's setting. Readings outside
 * −55 … 150 °C, and the −127 that means "no sensor answered", are kept as `bad`. Resistances that no
 * platinum sensor can have are rejected.
 *
 * @example
 * toChannelValue('head', { name: null, value: 172.4, unit: null }, '°F').value.value // ≈ 78 ± 1e-9
 * toChannelValue('head', { name: null, value: -127, unit: null }, '°C').value.quality // => "bad"
 */
export function toChannelValue(
  channel: Channel,
  raw: RawValue,
  unit: SerialSource['unit'],
): Result<ChannelValue, LineRejection> {
  if (raw.value === null) return fail({ kind: 'no-value', text: channel });
  const converted = convert(channel, raw.value, raw.unit, unit);
  if (converted === null) {
    return fail({ kind: 'outside-range', text: `${raw.value} ${raw.unit ?? unit}` });
  }
  const { limits } = converted;
  const value = converted.value === raw.value ? raw.value : withoutNoise(converted.value);
  const doubt = doubtOf(value, limits);
  return succeed({
    channel,
    value,
    unit: limits.unit,
    quality: doubt === null ? 'good' : 'bad',
    doubt,
  });
}

interface Converted {
  readonly value: number;
  readonly limits: Plausible;
}

function convert(
  channel: Channel,
  value: number,
  written: RawValue['unit'],
  setting: SerialSource['unit'],
): Converted | null {
  const kind = measured.get(channel);
  if (kind === 'amount') {
    if (written === 'mL') return { value, limits: plausible.volume };
    return { value: written === 'kg' ? value * 1000 : value, limits: plausible.mass };
  }
  if (kind === 'pressure') return { value: kPaFrom(value, written), limits: plausible.pressure };
  const isWarmth = written === '°C' || written === '°F' || written === 'K';
  if (kind === 'temperature' || isWarmth) {
    const celsius = celsiusFrom(value, written, setting);
    return celsius === null ? null : { value: celsius, limits: plausible.temperature };
  }
  return { value, limits: plausible.other };
}

/** mmHg: 101.325 kPa / 760 by definition. A bare number above 500 can only be hPa (mbar). */
function kPaFrom(value: number, written: RawValue['unit']): number {
  if (written === 'Pa') return value / 1000;
  if (written === 'hPa' || (written === null && value > 500)) return value / 10;
  if (written === 'mmHg') return (value * 101.325) / 760;
  return value;
}

/** Eight figures: finer than any probe, and a converted value is no longer written as 21.166666666666664. */
const withoutNoise = (value: number) => Number(value.toPrecision(8));

function doubtOf(value: number, limits: Plausible): ValueDoubt | null {
  if (limits.unit === '°C' && value === disconnectedC) return 'sensor-disconnected';
  return value >= limits.low && value <= limits.high ? null : 'outside-range';
}
