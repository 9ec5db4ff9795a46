import { beforeAll, expect, test } from 'vitest';
import { openPseudoTerminal } from '#main';
import { latin1Bytes } from '#shared-core';
import { heardHub, serialSource } from '../../main/probe/support/heard-hub.ts';
import { until } from '../../main/probe/support/until.ts';
import { compileSketch } from './compile-sketch.ts';
import { linesOfFaultyWire } from './faulty-wire.ts';
import { judgeLines } from './judge-lines.ts';
import { wireSensors } from './one-wire.ts';
import { createOneWireSensor } from './one-wire-sensor.ts';
import { createBoard } from './simulated-board.ts';

/*
 * The sketch as its reader compiles it, in a simulated chip, on a wire with sensors that keep the times and the memory of the data
 * sheet (see one-wire-sensor.ts). Not tried on a real board.
 */

let oneSensor: Uint16Array;
let twoSensors: Uint16Array;
beforeAll(async () => {
  oneSensor = await compileSketch('one-wire-probe');
  twoSensors = await compileSketch('one-wire-probe', { 'sensorsWired = 1': 'sensorsWired = 2' });
});

/** A board with two sensors, of which the one that is found first hangs in the head. */
function twoSensorBoard() {
  const head = createOneWireSensor(0x12);
  const pot = createOneWireSensor(0x11);
  const board = createBoard(twoSensors);
  const wire = wireSensors(board, [pot, head]);
  const lines = (seconds: number) => board.run(seconds).trimEnd().split('\r\n');
  return { head, pot, wire, lines };
}

test('two sensors are told apart by their numbers, with sixteenths of a degree and signs', () => {
  const { head, pot, lines } = twoSensorBoard();
  head.temperatureC = 78.3125;
  pot.temperatureC = -10.125;
  expect(lines(3)).toEqual(Array(3).fill('head,78.3125,pot,-10.1250'));
  expect(head.unclearFalls + pot.unclearFalls).toBe(0);
});

test('a sensor that is pulled or whose wire is shorted has no temperature, and has one again two lines after it is back', () => {
  const { head, pot, wire, lines } = twoSensorBoard();
  head.temperatureC = 78.5;
  pot.temperatureC = 91.25;
  lines(2);
  head.plug(false);
  expect(lines(3).slice(1)).toEqual(Array(2).fill('head,nan,pot,91.2500'));
  head.plug(true);
  expect(lines(3).slice(1)).toEqual(Array(2).fill('head,78.5000,pot,91.2500'));
  wire.short(true);
  expect(lines(3).slice(1)).toEqual(Array(2).fill('head,nan,pot,nan'));
  wire.short(false);
  expect(lines(3).slice(1)).toEqual(Array(2).fill('head,78.5000,pot,91.2500'));
});

test('a pot sensor alone is never called the head', () => {
  const { head, pot, lines } = twoSensorBoard();
  pot.temperatureC = 91.25;
  head.temperatureC = 78.5;
  head.plug(false);
  expect(lines(3)).toEqual(Array(3).fill('head,nan,pot,nan'));
  head.plug(true);
  expect(lines(3).slice(1)).toEqual(Array(2).fill('head,78.5000,pot,91.2500'));
});

test('what a sensor wakes up with is not told as a temperature, and a measured 85 °C is', () => {
  const { head, lines } = twoSensorBoard();
  head.temperatureC = 85;
  lines(2.4);
  head.plug(false);
  head.plug(true);
  // Its supply failed for a moment while it measured, in the third second.
  expect(lines(3.6).map((line) => line.split(',')[1])).toEqual([
    'nan',
    '85.0000',
    '85.0000',
    '85.0000',
  ]);
});

test('in four minutes of faults every line tells a temperature the head had, or that there is none; the program reads them all over a port', async () => {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(terminal.error);
  const { hub, readings } = heardHub();
  const lines = [...linesOfFaultyWire(oneSensor, 85, 240)];
  const { untrue, invented, withheld, faultsTold } = judgeLines(lines);
  expect({ untrue, invented, withheld, faultsTold: faultsTold > 30 }).toEqual({
    untrue: [],
    invented: 0,
    withheld: 0,
    faultsTold: true,
  });
  try {
    await hub.connect(serialSource(terminal.value.path));
    // Of the first line that is heard nobody knows how much is missing, and refusals count from the first reading.
    terminal.value.write(latin1Bytes('\r\n'));
    let sent = 0;
    for (const { text } of lines) {
      terminal.value.write(latin1Bytes(`${text}\r\n`));
      if (text !== 'head,nan') sent += 1;
      // A real wire never waits, and a port holds some 4 kB.
      if (sent % 50 === 1) await until('the readings so far', () => readings.length === sent);
    }
    await until('every reading', () => readings.length === sent);
    await until('every refusal', () => hub.status().rejectedLines === faultsTold);
    expect(readings.map(({ channel, value }) => `${channel},${value.toFixed(4)}`)).toEqual(
      lines.map(({ text }) => text).filter((text) => text !== 'head,nan'),
    );
  } finally {
    await hub.close();
    terminal.value.close();
  }
});

test("a sketch that does not wait for the sensor's word tells old temperatures, which the judge of lines notices", async () => {
  const careless = await compileSketch('one-wire-probe', {
    'if (measures[index] && bus.reset())': 'if (allFound && bus.reset())',
  });
  expect(judgeLines(linesOfFaultyWire(careless, 85, 240)).untrue.length).toBeGreaterThan(0);
});
