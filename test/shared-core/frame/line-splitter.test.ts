import { describe, expect, test } from 'vitest';
import { createLineSplitter, latin1Bytes } from '#shared-core';

function heard(chunks: readonly string[], longest?: number): readonly string[] {
  const splitter = createLineSplitter(longest);
  splitter.startOfLine();
  return chunks.flatMap((chunk) => splitter.push(latin1Bytes(chunk)));
}

describe('createLineSplitter', () => {
  test('takes \\n, \\r and \\r\\n as the same line end', () => {
    expect(heard(['1\n2\r3\r\n4\n\r5\n'])).toEqual(['1', '2', '3', '4', '5']);
  });

  test('gives the same lines wherever the stream is cut into chunks', () => {
    const stream = 'T=78.42\r\nhead,78.5,pot,91\r\n\r\n79.0\r';
    const whole = heard([stream]);
    for (let cut = 0; cut <= stream.length; cut += 1) {
      expect(heard([stream.slice(0, cut), stream.slice(cut)])).toEqual(whole);
    }
    expect(heard([...stream])).toEqual(whole);
  });

  test('drops the first line when it may have begun before listening', () => {
    const splitter = createLineSplitter();
    expect(splitter.push(latin1Bytes('8.42\n78.50\n'))).toEqual(['78.50']);
    expect(splitter.droppedBytes()).toBe(4);
  });

  test('does not glue a half line to what comes after the plug went back in', () => {
    const splitter = createLineSplitter();
    splitter.startOfLine();
    splitter.push(latin1Bytes('78.4'));
    splitter.restart();
    expect(splitter.push(latin1Bytes('2\n78.50\n'))).toEqual(['78.50']);
  });

  test('never holds more than the longest line and hears the next line after an overlong one', () => {
    const splitter = createLineSplitter(64);
    splitter.startOfLine();
    const noise = new Uint8Array(1_000_000).fill(0x41);
    expect(splitter.push(noise)).toEqual([]);
    expect(splitter.pendingBytes()).toBeLessThanOrEqual(64);
    expect(splitter.push(latin1Bytes('\n78.42\n'))).toEqual(['78.42']);
    expect({ dropped: splitter.droppedBytes(), overlong: splitter.overlongLines() }).toEqual({
      dropped: 1_000_000,
      overlong: 1,
    });
  });

  test('keeps every byte apart: a broken UTF-8 sequence does not eat the line end', () => {
    const splitter = createLineSplitter();
    splitter.startOfLine();
    expect(splitter.push(Uint8Array.of(0xe2, 0x82, 0x0a, 0x37, 0x38, 0x0a))).toEqual([
      'â\x82',
      '78',
    ]);
  });

  test('takes a line of just the longest length, and counts one byte more as overlong', () => {
    const splitter = createLineSplitter(5);
    splitter.startOfLine();
    const counts = () => [splitter.droppedBytes(), splitter.overlongLines()];
    expect([splitter.push(latin1Bytes('78.42\n')), ...counts()]).toEqual([['78.42'], 0, 0]);
    expect([splitter.push(latin1Bytes('78.421\n')), ...counts()]).toEqual([[], 6, 1]);
    expect(heard([`${'x'.repeat(512)}\n`, `${'x'.repeat(513)}\n`])).toEqual(['x'.repeat(512)]);
  });

  test('counts every byte of a half line that is given up, and holds none of it', () => {
    const splitter = createLineSplitter();
    const state = () => [splitter.pendingBytes(), splitter.droppedBytes()];
    splitter.startOfLine();
    splitter.push(latin1Bytes('78.4'));
    expect(state()).toEqual([4, 0]);
    splitter.startOfLine();
    expect(state()).toEqual([0, 4]);
    splitter.push(latin1Bytes('91'));
    splitter.restart();
    expect(state()).toEqual([0, 6]);
  });

  test('a line feed is the end of the line before it only right behind its carriage return', () => {
    const splitter = createLineSplitter();
    splitter.push(latin1Bytes('8.42\r'));
    splitter.restart();
    // Behind the gap this line feed ends the line that was missed.
    expect(splitter.push(latin1Bytes('\n78.50\n'))).toEqual(['78.50']);
    expect(heard(['1\rx', '\n2\n'])).toEqual(['1', 'x', '2']);
  });
});
