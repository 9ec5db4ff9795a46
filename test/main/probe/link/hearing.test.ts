import { describe, expect, test } from 'vitest';
import { createLineReader, type LineOutcome, latin1Bytes } from '#shared-core';
import { createHearing } from '../../../../main/probe/link/hearing.ts';
import { serialSource } from '../support/heard-hub.ts';

/** A probe whose port was opened at 100 s; seconds count from there. */
function heard(expectsText = true) {
  const hearing = createHearing(expectsText);
  const source = serialSource('/dev/ttyACM0', { language: 'plain-text' });
  const reader = createLineReader(source as Parameters<typeof createLineReader>[0]);
  const openedS = 100;
  hearing.opened(openedS);
  const read = (text: string): LineOutcome => reader.read(text);
  return {
    hearing,
    open: (atS: number) => hearing.opened(openedS + atS),
    /** Lines that came in one piece. */
    say(atS: number, ...lines: readonly string[]) {
      hearing.bytes(latin1Bytes(lines.map((line) => `${line}\n`).join('')), openedS + atS);
      hearing.outcomes(lines.map(read), openedS + atS);
    },
    bytes: (atS: number, bytes: Uint8Array | string) =>
      hearing.bytes(typeof bytes === 'string' ? latin1Bytes(bytes) : bytes, openedS + atS),
    state: (atS: number) => hearing.state(openedS + atS),
    states: (...momentsS: readonly number[]) =>
      momentsS.map((atS) => hearing.state(openedS + atS)).join(' '),
    rate: (atS: number) => hearing.readingsPerS(openedS + atS),
    advice: (atS: number) => hearing.advice(openedS + atS),
  };
}

describe('whether a probe is heard', () => {
  test('is not known for five seconds; then a port that says nothing is silent', () => {
    const { states, advice } = heard();
    expect(states(0, 5, 5.1)).toBe('connecting connecting silent');
    expect([advice(1), advice(6)]).toEqual([
      'Listening …',
      'The port is open but nothing arrives: is the probe switched on, and is this the right port?',
    ]);
  });

  test('is given three seconds of what a board says while it starts; what makes no sense later is unreadable', () => {
    const { bytes, states } = heard();
    bytes(1, 'booting\n');
    expect(states(3, 3.1, 6, 6.1)).toBe('connecting unreadable unreadable silent');
  });

  test('lasts for fifteen seconds after a first reading, since nobody knows how slow it is', () => {
    const { say, states } = heard();
    say(1, '20.5');
    expect(states(1, 16, 16.1)).toBe('hearing hearing silent');
  });

  test('lasts for three of its intervals, and never less than five seconds', () => {
    const slow = heard();
    slow.say(1, '20.5');
    slow.say(5, '20.5');
    // Four seconds between two lines: twelve.
    expect(slow.states(17, 17.1)).toBe('hearing silent');
    const quick = heard();
    for (const atS of [1, 1.5, 2]) quick.say(atS, '20.5');
    expect(quick.states(7, 7.1)).toBe('hearing silent');
  });

  test('counts lines that came in one piece as lines that came one by one', () => {
    const { say, states } = heard();
    say(1, '20.5');
    say(9, '20.5', '20.6', '20.7', '20.8');
    // Eight seconds for four lines: two each, so three of them are six.
    expect(states(15, 15.1)).toBe('hearing silent');
  });

  test('follows a change of pace by a fifth of it', () => {
    const { say, states } = heard();
    say(1, '20.5');
    say(5, '20.5');
    say(14, '20.5');
    // 4 s + a fifth of (9 s − 4 s) = 5 s.
    expect(states(29, 29.1)).toBe('hearing silent');
  });

  test('begins anew where the port is opened again', () => {
    const { say, open, states, hearing } = heard();
    say(1, '20.5');
    open(20);
    expect(states(20, 25, 25.1)).toBe('connecting connecting silent');
    expect(hearing.recentLines()).toEqual(['20.5']);
  });
});

describe('how much is heard', () => {
  test('is told a second, of the last five seconds, or of all since the port was opened', () => {
    const { say, rate } = heard();
    for (let tenth = 1; tenth <= 10; tenth += 1) say(tenth / 10, '20.5');
    // Ten readings in the first second; the first half second counts as a whole one.
    expect([rate(1), rate(2), rate(4)]).toEqual([10, 5, 2.5]);
    for (let second = 2; second <= 10; second += 1) say(second, '20.5');
    expect([rate(10), rate(14.9), rate(20)]).toEqual([1, 0.2, 0]);
  });

  test('counts each value of a line', () => {
    const { say, rate } = heard();
    say(1, 'head,78.5,pot,91.3');
    expect(rate(1)).toBe(2);
  });

  test('keeps the eight newest lines, each as far as it can be shown', () => {
    const { say, hearing } = heard();
    for (let line = 1; line <= 10; line += 1) say(line, `20.${line}`);
    say(11, `# ${'x'.repeat(500)}`);
    const lines = hearing.recentLines();
    expect([lines.length, lines[0], lines.at(-2)]).toEqual([8, '20.4', '20.10']);
    expect(lines.at(-1)?.length).toBeLessThanOrEqual(201);
    expect(lines.at(-1)?.length).toBeGreaterThan(100);
  });
});

describe('lines that were not understood', () => {
  test('are counted, but for those of a board that starts', () => {
    const { say, hearing } = heard();
    say(1, 'rst cause:2, boot mode');
    expect(hearing.rejectedLines()).toBe(0);
    say(2, '20.5');
    say(2.5, 'what is this?');
    expect(hearing.rejectedLines()).toBe(1);
    const late = heard();
    late.say(3.1, 'what is this?');
    expect(late.hearing.rejectedLines()).toBe(1);
  });

  test('are explained by the newest of them, until one is understood', () => {
    const { say, advice, state } = heard();
    say(1, '20.5');
    for (let second = 2; second <= 20; second += 1) say(second, 'nan');
    expect([state(20), advice(20)]).toEqual([
      'unreadable',
      'The probe says it has no value for head: is the sensor plugged in?',
    ]);
    say(21, '20.5');
    expect([state(21), advice(21)]).toEqual(['hearing', null]);
    // One of several channels has none: said while the others are heard.
    say(22, 'head,20.5,pot,nan');
    expect(advice(22)).toBe('The probe says it has no value for pot: is the sensor plugged in?');
    say(23, 'no. 5 is not known');
    expect(advice(23)).toBeNull();
  });

  test('that are no text point to the speed', () => {
    const { bytes, advice } = heard();
    bytes(
      4,
      Uint8Array.from({ length: 100 }, (_, index) => 0x80 + (index % 0x70)),
    );
    expect(advice(4)).toMatch(/^Bytes arrive but they are not text: the speed/);
    // Four of five bytes that are text are enough.
    const mixed = heard();
    mixed.bytes(
      4,
      Uint8Array.from({ length: 100 }, (_, index) => (index < 80 ? 0x41 : 0x80)),
    );
    expect(mixed.advice(4)).toMatch(/^Text arrives without line ends/);
    const worse = heard();
    worse.bytes(
      4,
      Uint8Array.from({ length: 100 }, (_, index) => (index < 79 ? 0x41 : 0x80)),
    );
    expect(worse.advice(4)).toMatch(/not text/);
  });

  test('that never end point to speed and language; either line end will do', () => {
    const { bytes, advice } = heard();
    bytes(4, '20.5 20.6 20.7');
    expect(advice(4)).toMatch(/^Text arrives without line ends/);
    for (const end of ['\r', '\n']) {
      const ended = heard();
      ended.bytes(4, `${end}20.5`);
      expect(ended.advice(4)).toMatch(/^Lines arrive but none holds a reading/);
    }
  });

  test('say what is wrong now, not what was wrong a long time ago', () => {
    const { bytes, advice } = heard();
    for (let piece = 0; piece < 3; piece += 1) bytes(4, new Uint8Array(2000).fill(0x80));
    expect(advice(4)).toMatch(/not text/);
    // Of what is older the half counts, and the half of that.
    for (let piece = 0; piece < 12; piece += 1) bytes(5, `${'A'.repeat(1999)}\n`);
    expect(advice(5)).toMatch(/^Lines arrive but none holds a reading/);
    const anew = heard();
    anew.bytes(1, new Uint8Array(100).fill(0x80));
    anew.open(10);
    anew.bytes(14, 'A\n');
    expect(anew.advice(14)).toMatch(/^Lines arrive but none holds a reading/);
  });

  test('of a device that is asked in bytes point to speed, parity and unit, or say what it answered', () => {
    const { bytes, advice, hearing } = heard(false);
    bytes(4, Uint8Array.of(1, 2, 3));
    expect(advice(4)).toMatch(/^Bytes arrive that are no answer/);
    hearing.outcomes(
      [{ text: '', values: [], rejections: [{ kind: 'no-value', text: 'head' }] }],
      104,
    );
    expect(advice(4)).toBe('The probe says it has no value for head: is the sensor plugged in?');
    hearing.opened(110);
    bytes(14, Uint8Array.of(1, 2, 3));
    expect(advice(14)).toMatch(/^Bytes arrive that are no answer/);
  });
});
