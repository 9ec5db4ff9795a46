import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { fnv1a64 } from '../../../shared-core/random/fnv1a-64.ts';
import { splitMix64 } from '../../../shared-core/random/split-mix-64.ts';
import { xoshiro128 } from '../../../shared-core/random/xoshiro-128.ts';

const many = 200_000;

function draw(count: number, next: () => number): number[] {
  return Array.from({ length: count }, () => next());
}

function moments(values: readonly number[]): { mean: number; variance: number; kurtosis: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const central = (power: number) =>
    values.reduce((sum, value) => sum + (value - mean) ** power, 0) / values.length;
  return { mean, variance: central(2), kurtosis: central(4) / central(2) ** 2 };
}

describe('building blocks', () => {
  test('xoshiro128** reproduces the reference output for the state 1, 2, 3, 4', () => {
    // Source: reference vectors made with xoshiro128starstar.c, as in the rand_xoshiro test suite.
    expect(draw(10, xoshiro128([1, 2, 3, 4]))).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597,
      4258142804,
    ]);
  });

  test('SplitMix64 reproduces the reference output for the seed 1477776061723855037', () => {
    // Source: reference vectors made with splitmix64.c, as in the rand_xoshiro test suite.
    const next = splitMix64(1477776061723855037n);
    expect([next(), next(), next()]).toEqual([
      1985237415132408290n,
      2979275885539914483n,
      13511426838097143398n,
    ]);
  });

  test('FNV-1a 64 reproduces the published hashes of "", "a", "foobar" and four bytes', () => {
    // Source: draft-eastlake-fnv, test vectors.
    expect(['', 'a', 'foobar'].map(fnv1a64)).toEqual([
      0xcbf29ce484222325n,
      0xaf63dc4c8601ec8cn,
      0x85944171f73967e8n,
    ]);
    expect(fnv1a64('\u00ff\u0000\u0000\u0001')).toBe(0x6961196491cc682dn);
  });

  test('FNV-1a takes a character beyond Latin 1 for its two bytes, the low one first', () => {
    expect(fnv1a64('\u0141\u2103')).toBe(fnv1a64('A\u0001\u0003\u0021'));
    expect(fnv1a64('\u00ff')).not.toBe(fnv1a64('\u00ff\u0000'));
    expect(fnv1a64('\u0100')).toBe(fnv1a64('\u0000\u0001'));
  });

  test('an all-zero state is refused', () => {
    expect(() => xoshiro128([0, 0, 0, 0])).toThrow('all-zero');
  });
});

describe('createRandom', () => {
  test('a seed gives these numbers for ever', () => {
    // Worked out from the published descriptions of the three building blocks and the polar method, in another language.
    expect(draw(4, createRandom('pear').uniform).map((value) => value * 2 ** 53)).toEqual([
      80079675226789, 1123957246671273, 8024714735290714, 5047946973031983,
    ]);
    const normal = draw(6, createRandom('pear').normal).map((value) => value.toFixed(12));
    expect(normal).toEqual([
      '0.956705271287',
      '0.147902002361',
      '-2.677242153141',
      '0.919343173387',
      '-0.166048101538',
      '-0.636077086666',
    ]);
  });

  test('the same seed gives the same numbers and a different seed gives others', () => {
    const first = draw(5, createRandom(42).uniform);
    expect(draw(5, createRandom('42').uniform)).toEqual(first);
    expect(draw(5, createRandom(43).uniform)).not.toEqual(first);
  });

  test('a fork depends on seed and label, not on what was drawn before', () => {
    const fresh = createRandom(7);
    const used = createRandom(7);
    draw(100, used.normal);
    expect(draw(3, used.fork('probe').uniform)).toEqual(draw(3, fresh.fork('probe').uniform));
    expect(draw(3, fresh.fork('probe').uniform)).not.toEqual(draw(3, fresh.fork('room').uniform));
  });

  test('a stream and its fork are uncorrelated', () => {
    const parent = createRandom('parent');
    const child = parent.fork('child');
    const products = draw(many, () => parent.normal() * child.normal());
    expect(Math.abs(moments(products).mean)).toBeLessThan(5 / Math.sqrt(many));
  });

  test('uniform numbers lie in [0, 1) and have mean 1/2 and variance 1/12', () => {
    const values = draw(many, createRandom('uniform').uniform);
    expect(values.every((value) => value >= 0 && value < 1)).toBe(true);
    const { mean, variance } = moments(values);
    expect(mean).toBeCloseTo(0.5, 2);
    expect(variance).toBeCloseTo(1 / 12, 3);
  });

  test('uniform numbers have 53 bits, of which each is set half of the time', () => {
    const values = draw(4000, createRandom('bits').uniform).map((value) => value * 2 ** 53);
    expect(values.every(Number.isInteger)).toBe(true);
    for (let bit = 0; bit < 53; bit += 1) {
      const set = values.filter((value) => Math.floor(value / 2 ** bit) % 2 === 1).length;
      expect(Math.abs(set / 4000 - 0.5)).toBeLessThan(0.05);
    }
  });

  test('normal numbers come in pairs that have nothing to do with each other, and are bell-shaped', () => {
    const values = draw(40_000, createRandom('pairs').normal);
    const products = values.flatMap((value, index) =>
      index % 2 === 0 ? [value * values[index + 1]!] : [],
    );
    expect(Math.abs(moments(products).mean)).toBeLessThan(0.04);
    expect(new Set(values).size).toBe(40_000);
    // 68.27 % within one standard deviation, 95.45 % within two.
    const within = (limit: number) =>
      values.filter((value) => Math.abs(value) < limit).length / values.length;
    expect(Math.abs(within(1) - 0.6827)).toBeLessThan(0.01);
    expect(Math.abs(within(2) - 0.9545)).toBeLessThan(0.005);
  });

  test('normal numbers have mean 0, variance 1 and kurtosis 3', () => {
    const { mean, variance, kurtosis } = moments(draw(many, createRandom('normal').normal));
    expect(Math.abs(mean)).toBeLessThan(0.01);
    expect(Math.abs(variance - 1)).toBeLessThan(0.015);
    expect(Math.abs(kurtosis - 3)).toBeLessThan(0.06);
  });

  test('exponential numbers are positive with mean 1 and variance 1', () => {
    const values = draw(many, createRandom('exponential').exponential);
    expect(values.every((value) => value >= 0)).toBe(true);
    const { mean, variance } = moments(values);
    expect(Math.abs(mean - 1)).toBeLessThan(0.015);
    expect(Math.abs(variance - 1)).toBeLessThan(0.04);
  });

  test('integers reach both ends and nothing outside', () => {
    const random = createRandom('dice');
    const values = new Set(draw(1000, () => random.integer(-1, 4)));
    expect([...values].sort((a, b) => a - b)).toEqual([-1, 0, 1, 2, 3, 4]);
    expect(random.integer(3, 3)).toBe(3);
  });

  test('integers with crossed, fractional or missing ends are refused', () => {
    const random = createRandom(1);
    expect(() => random.integer(2, 1)).toThrow('low ≤ high');
    expect(() => random.integer(0, 1.5)).toThrow('low ≤ high');
    expect(() => random.integer(Number.NaN, 1)).toThrow('low ≤ high');
  });
});
