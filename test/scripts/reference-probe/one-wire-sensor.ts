/*
 * A digital one-wire sensor as its data sheet has it (DS18B20, rev. 042208; times and commands from memory): what it
 * answers, and within which times the wire must be low. It holds a 0 no longer than the 15 µs that the sheet promises, so a
 * board that looks later reads 1.
 */

const resetLowUs = 480;
const presenceAfterUs = 30;
const presenceLowUs = 120;
/** The wire is looked at between these times after its fall; a level that changes in between is nobody's bit. */
const sampledUs = { first: 15, last: 60 };
const zeroHeldUs = 15;
export const conversionUs = 750_000;

const command = {
  search: 0xf0,
  match: 0x55,
  convert: 0x44,
  write: 0x4e,
  read: 0xbe,
} as const;

/** Temperature, two free bytes and resolution as they are when the supply comes, before anything was measured. */
const powerOnScratchpad = [0x50, 0x05, 0x4b, 0x46, 0x7f, 0xff, 0x0c, 0x10] as const;

/** What a sensor hears on the wire and how it answers; one fall and one rise at a time. */
export interface OneWireSensor {
  /** What it would measure now. */
  temperatureC: number;
  /** Whether it hangs on the wire; a sensor that was off has lost all but its number. */
  plug(isIn: boolean): void;
  /** How its next answers are damaged on the way, bit by bit. */
  damage: (bit: boolean) => boolean;
  /** The wire fell: how long the sensor holds it low, and from when. */
  fell(atUs: number): HoldsLow | null;
  /** The wire rose again after so long. */
  rose(atUs: number, lowUs: number): HoldsLow | null;
  /** Falls that were neither a reset nor a clear bit. */
  readonly unclearFalls: number;
}

export interface HoldsLow {
  readonly afterUs: number;
  readonly forUs: number;
}

/** What the sensor awaits: the bits of a number, a command, or bits that it sends. */
type Phase =
  | { readonly kind: 'idle' }
  | { readonly kind: 'searched'; at: number; step: 'bit' | 'complement' | 'turn' }
  | { readonly kind: 'converts' }
  | { readonly kind: 'sends'; readonly bits: readonly boolean[]; at: number }
  | {
      readonly kind: 'hears';
      bits: boolean[];
      readonly count: number;
      readonly then: 'rom' | 'number' | 'function' | 'scratchpad';
    };

export function createOneWireSensor(serialNumber: number): OneWireSensor {
  const numberBytes = [0x28, ...littleEndian(serialNumber, 6)];
  const numberBits = bitsOf([...numberBytes, crc8(numberBytes)]);
  let isIn = true;
  let scratchpad: number[] = [...powerOnScratchpad];
  let phase: Phase = { kind: 'idle' };
  let convertedAtUs: number | null = null;
  let measuredC = 0;
  let unclearFalls = 0;

  function hears(count: number, then: 'rom' | 'number' | 'function' | 'scratchpad'): Phase {
    return { kind: 'hears', bits: [], count, then };
  }

  /** A conversion that was begun long enough ago is in the scratchpad. */
  function settle(atUs: number): void {
    if (convertedAtUs === null || atUs < convertedAtUs) return;
    const raw = Math.round(measuredC * 16) & 0xffff;
    scratchpad = [raw & 0xff, raw >> 8, ...scratchpad.slice(2)];
    convertedAtUs = null;
  }

  function obey(bits: readonly boolean[], then: string, atUs: number): Phase {
    const bytes = bytesOf(bits);
    if (then === 'number') {
      return bits.every((bit, at) => bit === numberBits[at])
        ? hears(8, 'function')
        : { kind: 'idle' };
    }
    if (then === 'scratchpad') {
      scratchpad = [...scratchpad.slice(0, 2), ...bytes, ...scratchpad.slice(5)];
      return { kind: 'idle' };
    }
    const [code] = bytes;
    if (then === 'rom') {
      if (code === command.search) return { kind: 'searched', at: 0, step: 'bit' };
      return code === command.match ? hears(64, 'number') : { kind: 'idle' };
    }
    if (code === command.write) return hears(24, 'scratchpad');
    if (code === command.convert) {
      measuredC = sensor.temperatureC;
      convertedAtUs = atUs + conversionUs;
      return { kind: 'converts' };
    }
    if (code !== command.read) return { kind: 'idle' };
    settle(atUs);
    return { kind: 'sends', bits: bitsOf([...scratchpad, crc8(scratchpad)]), at: 0 };
  }

  /** The bit that the sensor sends in this slot, if it sends one. */
  function answer(atUs: number): boolean | null {
    if (phase.kind === 'converts') return convertedAtUs === null || atUs >= convertedAtUs;
    if (phase.kind === 'sends') return phase.bits[phase.at++] ?? true;
    if (phase.kind !== 'searched' || phase.step === 'turn') return null;
    const bit = numberBits[phase.at] ?? false;
    const { step } = phase;
    phase.step = step === 'bit' ? 'complement' : 'turn';
    return step === 'bit' ? bit : !bit;
  }

  function take(bit: boolean, atUs: number): void {
    if (phase.kind === 'searched') {
      const stays = bit === numberBits[phase.at];
      phase =
        stays && phase.at < 63
          ? { kind: 'searched', at: phase.at + 1, step: 'bit' }
          : { kind: 'idle' };
    } else if (phase.kind === 'hears') {
      phase.bits.push(bit);
      if (phase.bits.length === phase.count) phase = obey(phase.bits, phase.then, atUs);
    }
  }

  let sending = false;
  const sensor: OneWireSensor = {
    temperatureC: 20,
    damage: (bit) => bit,
    plug(plugged) {
      isIn = plugged;
      scratchpad = [...powerOnScratchpad];
      convertedAtUs = null;
      phase = { kind: 'idle' };
    },
    fell(atUs) {
      const bit = isIn ? answer(atUs) : null;
      sending = bit !== null;
      return bit !== null && !sensor.damage(bit) ? { afterUs: 0, forUs: zeroHeldUs } : null;
    },
    rose(atUs, lowUs) {
      if (!isIn) return null;
      if (lowUs >= resetLowUs) {
        phase = hears(8, 'rom');
        return { afterUs: presenceAfterUs, forUs: presenceLowUs };
      }
      if (sending) return null;
      if (lowUs < sampledUs.first || lowUs >= sampledUs.last) take(lowUs < sampledUs.first, atUs);
      else unclearFalls += 1;
      return null;
    },
    get unclearFalls() {
      return unclearFalls;
    },
  };
  return sensor;
}

function littleEndian(number: number, length: number): number[] {
  return Array.from({ length }, (_, at) => Math.floor(number / 256 ** at) % 256);
}

function bitsOf(bytes: readonly number[]): boolean[] {
  return bytes.flatMap((byte) => Array.from({ length: 8 }, (_, at) => ((byte >> at) & 1) === 1));
}

function bytesOf(bits: readonly boolean[]): number[] {
  return Array.from({ length: bits.length / 8 }, (_, byte) =>
    bits.slice(8 * byte, 8 * byte + 8).reduce((sum, bit, at) => sum | (Number(bit) << at), 0),
  );
}

/** x⁸ + x⁵ + x⁴ + 1, lowest bit first: the checksum of the data sheet. */
export function crc8(bytes: readonly number[]): number {
  let crc = 0;
  for (const byte of bytes) {
    for (let at = 0; at < 8; at++) {
      const carry = ((crc ^ (byte >> at)) & 1) === 1;
      crc = (crc >> 1) ^ (carry ? 0x8c : 0);
    }
  }
  return crc;
}
