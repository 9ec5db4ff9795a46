/** Square matrices as rows in one array: the few steps a small Kalman filter needs, without making new arrays. */

export function add(into: Float64Array, at: number, value: number): void {
  into[at] = (into[at] as number) + value;
}

/** For so few numbers faster than `fill`. */
export function clear(values: Float64Array): void {
  for (let at = 0; at < values.length; at += 1) values[at] = 0;
}

/** Makes one array the same as another; for so few numbers faster than `set`. */
export function copyValues(into: Float64Array, from: Float64Array): void {
  for (let at = 0; at < into.length; at += 1) into[at] = from[at] as number;
}

export function addScaled(into: Float64Array, from: Float64Array, weight: number): void {
  for (let at = 0; at < into.length; at += 1) add(into, at, weight * (from[at] as number));
}

/** Adds a model's covariance and how far its mean lies from the mean of all; both are symmetric, and half of them is worked out. */
export function addSpread(
  into: Float64Array,
  covariance: Float64Array,
  mean: Float64Array,
  meanOfAll: Float64Array,
  weight: number,
): void {
  const size = meanOfAll.length;
  for (let row = 0; row < size; row += 1) {
    const off = (mean[row] as number) - (meanOfAll[row] as number);
    for (let column = 0; column <= row; column += 1) {
      const at = row * size + column;
      const spread = off * ((mean[column] as number) - (meanOfAll[column] as number));
      const sum = (into[at] as number) + weight * ((covariance[at] as number) + spread);
      into[at] = sum;
      into[column * size + row] = sum;
    }
  }
}

/** A square matrix of which most is nothing: row by row, the places where something stands. */
export interface SparseMatrix {
  readonly size: number;
  readonly rows: Uint8Array;
  readonly columns: Uint8Array;
  readonly values: Float64Array;
}

export function sparse(all: readonly (readonly number[])[]): SparseMatrix {
  const entries = all.flatMap((cells, row) =>
    cells.map((value, column) => ({ row, column, value })).filter(({ value }) => value !== 0),
  );
  return {
    size: all.length,
    rows: Uint8Array.from(entries, ({ row }) => row),
    columns: Uint8Array.from(entries, ({ column }) => column),
    values: Float64Array.from(entries, ({ value }) => value),
  };
}

/** The mean after a second. */
export function applyTo(mean: Float64Array, by: SparseMatrix, room: Float64Array): void {
  clear(room);
  for (let entry = 0; entry < by.values.length; entry += 1) {
    const value = by.values[entry] as number;
    add(room, by.rows[entry] as number, value * (mean[by.columns[entry] as number] as number));
  }
  copyValues(mean, room);
}

/** `into = a b` */
export function multiply(a: SparseMatrix, b: Float64Array, into: Float64Array): void {
  const { size, values } = a;
  clear(into);
  for (let entry = 0; entry < values.length; entry += 1) {
    const value = values[entry] as number;
    const to = size * (a.rows[entry] as number);
    const from = size * (a.columns[entry] as number);
    for (let column = 0; column < size; column += 1) {
      add(into, to + column, value * (b[from + column] as number));
    }
  }
}

/** `into = a bᵀ` */
export function multiplyTransposed(a: Float64Array, b: SparseMatrix, into: Float64Array): void {
  const { size, values } = b;
  clear(into);
  for (let entry = 0; entry < values.length; entry += 1) {
    const value = values[entry] as number;
    const to = b.rows[entry] as number;
    const from = b.columns[entry] as number;
    for (let start = 0; start < size * size; start += size) {
      add(into, start + to, (a[start + from] as number) * value);
    }
  }
}
