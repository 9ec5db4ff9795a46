import { createRandom, type Random } from '../../../shared-core/random/create-random.ts';
import { wireSensors } from './one-wire.ts';
import { createOneWireSensor } from './one-wire-sensor.ts';
import { createBoard } from './simulated-board.ts';

type FaultKind = 'pulled' | 'blink' | 'short' | 'noise';

/** A fault of the wiring that is over by itself, in seconds since the board was switched on. */
interface Fault {
  readonly kind: FaultKind;
  readonly fromS: number;
  readonly untilS: number;
}

/** A line that the board sent, beside what its sensor was exposed to. */
export interface HeardLine {
  readonly text: string;
  /** Head temperatures that it may show: those since the conversion before it. */
  readonly possibleC: readonly number[];
  /** `always`: no reading can have come through; `never`: one must have; `partly`: it may. */
  readonly wasFaulty: 'always' | 'partly' | 'never';
}

/** Chance that one bit of a sensor's answer is turned over while the wire picks up noise. */
const bitNoise = 0.01;

/** Between asking the sensor and the end of the second in which its line is found: conversion, sending, up to a second of waiting. */
const oldestAnswerS = 2.3;
/** A sensor that was away is told of once more, until its next conversion is asked for. */
const recoveryS = 1.3;

/**
 * Runs the compiled one-wire sketch beside a head that climbs and falls and passes through 85 °C, while the sensor is pulled,
 * loses its supply for a blink, is shorted or hears noise. Same seed, same lines.
 */
export function* linesOfFaultyWire(
  flash: Uint16Array,
  seed: number,
  seconds: number,
): Generator<HeardLine> {
  const random = createRandom(seed);
  const faults = drawFaults(random.fork('faults'), seconds);
  const board = createBoard(flash);
  const sensor = createOneWireSensor(0x5a17);
  const wire = wireSensors(board, [sensor]);
  const bits = random.fork('bits');
  const act: Record<FaultKind, (isOn: boolean) => void> = {
    pulled: (isOn) => sensor.plug(!isOn),
    blink: (isOn) => sensor.plug(!isOn),
    short: (isOn) => wire.short(isOn),
    noise: (isOn) => {
      sensor.damage = (bit) => (isOn && bits.uniform() < bitNoise ? !bit : bit);
    },
  };
  for (const { kind, fromS, untilS } of faults) {
    board.after(fromS * 1e6, () => act[kind](true));
    board.after(untilS * 1e6, () => act[kind](false));
  }
  let unended = '';
  for (let second = 0; second < seconds; second++) {
    sensor.temperatureC = headC(second);
    const [last = '', ...lines] = (unended + board.run(1)).split('\r\n').reverse();
    unended = last;
    for (const text of lines.reverse()) {
      yield {
        text,
        possibleC: [second, second - 1, second - 2, second - 3].map(headC),
        wasFaulty: faultinessAt(second + 1, faults),
      };
    }
  }
}

/** A triangle between 80 and 90 °C in steps of 1/16 °C; before the first second as in it. */
function headC(second: number): number {
  const step = Math.max(0, second) % 320;
  return 80 + Math.min(step, 320 - step) / 16;
}

function drawFaults(random: Random, seconds: number): Fault[] {
  const kinds: readonly FaultKind[] = ['pulled', 'blink', 'short', 'noise'];
  const faults: Fault[] = [];
  for (let fromS = 5; fromS < seconds; ) {
    const kind = kinds[random.integer(0, kinds.length - 1)] ?? 'pulled';
    const untilS = fromS + (kind === 'blink' ? 0.05 : 1 + 7 * random.uniform());
    faults.push({ kind, fromS, untilS });
    fromS = untilS + 1 + 20 * random.uniform();
  }
  return faults;
}

function faultinessAt(foundS: number, faults: readonly Fault[]): HeardLine['wasFaulty'] {
  const askedS = foundS - oldestAnswerS;
  const near = faults.filter(({ fromS, untilS }) => fromS < foundS && untilS > askedS - recoveryS);
  const silences = near.filter(({ kind }) => kind === 'pulled' || kind === 'short');
  if (silences.some(({ fromS, untilS }) => fromS < askedS && untilS > foundS)) return 'always';
  return near.length === 0 ? 'never' : 'partly';
}
