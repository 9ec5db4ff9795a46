import { beforeAll, expect, test } from 'vitest';
import { compileSketch } from './compile-sketch.ts';
import { wireConverter } from './resistance-converter.ts';
import { createBoard } from './simulated-board.ts';

let flash: Uint16Array;
beforeAll(async () => {
  flash = await compileSketch('pt100-probe');
});

test('the Pt100 sketch sends the resistance to a step of the converter, and nan while its wire is broken or its amplifier was off', () => {
  const board = createBoard(flash);
  const converter = wireConverter(board);
  const lines = (seconds: number) => board.run(seconds).trimEnd().split('\r\n');
  // 130.19 Ω is 78.15 °C: test/reference/iec60751_pt100.csv. A step of the converter is 430 Ω / 32768.
  converter.resistanceOhm = 130.19;
  const whole = Number(
    lines(3)
      .at(-1)
      ?.replace(/^head,(.*) ohm$/, '$1'),
  );
  expect(Math.abs(whole - 130.19)).toBeLessThanOrEqual(430 / 32_768);
  converter.resistanceOhm = null;
  expect(lines(3).slice(1)).toEqual(['head,nan', 'head,nan']);
  converter.resistanceOhm = 138.51;
  expect(lines(3).at(-1)).toMatch(/^head,138\.5\d\d\d ohm$/);
  converter.restart();
  expect(lines(2)).toEqual(['head,nan', expect.stringMatching(/^head,138\.5\d\d\d ohm$/)]);
});
