import { expect, test } from 'vitest';
import {
  addSpread,
  applyTo,
  multiply,
  multiplyTransposed,
  sparse,
} from '../../../../shared-core/monitor/situation/small-matrix.ts';

const a = Float64Array.of(1, 2, 3, 4);
const b = Float64Array.of(5, 6, 7, 8);

test('products are those worked out by hand', () => {
  const into = new Float64Array(4);
  multiply(
    sparse([
      [1, 2],
      [3, 4],
    ]),
    b,
    into,
  );
  expect([...into]).toEqual([19, 22, 43, 50]);
  multiplyTransposed(
    a,
    sparse([
      [5, 6],
      [7, 8],
    ]),
    into,
  );
  // [1 2; 3 4] · [5 7; 6 8]
  expect([...into]).toEqual([17, 23, 39, 53]);
  const mean = Float64Array.of(1, 10);
  applyTo(
    mean,
    sparse([
      [1, 2],
      [3, 4],
    ]),
    new Float64Array(2),
  );
  expect([...mean]).toEqual([21, 43]);
});

test('where nothing stands in a matrix, nothing comes of it', () => {
  const into = Float64Array.of(9, 9, 9, 9);
  multiply(
    sparse([
      [0, 2],
      [0, 0],
    ]),
    b,
    into,
  );
  expect([...into]).toEqual([14, 16, 0, 0]);
  multiplyTransposed(
    a,
    sparse([
      [0, 0],
      [0, 3],
    ]),
    into,
  );
  expect([...into]).toEqual([0, 6, 0, 12]);
});

test('the spread of a mixture is its covariances and how far its means lie apart', () => {
  const into = new Float64Array(4);
  addSpread(into, Float64Array.of(1, 0, 0, 2), Float64Array.of(3, 1), Float64Array.of(1, 2), 0.5);
  // Half of [1 0; 0 2] + [2; −1]·[2 −1] = [5 −2; −2 3].
  expect([...into]).toEqual([2.5, -1, -1, 1.5]);
});
