/** Square matrices as rows in one array: the few steps a small Kalman filter needs, without making new arrays. */

export function add(into: Float64Array, at: number, value: number): void {
  into[at] = (into[at] as number) + value;
}

/** Makes one array the same as another; for so few numbers faster than `set`. */
export function copyValues(into: Float64Array, from: Float64Array): void {
  for (let at = 0; at < into.length; at += 1) into[at] = from[at] as number;
}

export function addScaled(into: Float64Array, from: Float64Array, weight: number): void {
  for (let at = 0; at < into.length; at += 1) add(into, at, weight * (from[at] as number));
}

/** Adds a model's covariance and how far its mean lies from the mean of all. */
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
    for (let column = 0; column < size; column += 1) {
      const at = row * size + column;
      const spread = off * ((mean[column] as number) - (meanOfAll[column] as number));
      add(into, at, weight * ((covariance[at] as number) + spread));
    }
  }
}

/** The mean after a second. */
export function applyTo(mean: Float64Array, transition: Float64Array, room: Float64Array): void {
  const size = mean.length;
  for (let row = 0; row < size; row += 1) {
    let sum = 0;
    for (let k = 0; k < size; k += 1) {
      sum += (transition[row * size + k] as number) * (mean[k] as number);
    }
    room[row] = sum;
  }
  copyValues(mean, room);
}

export function multiply(a: Float64Array, b: Float64Array, into: Float64Array, size: number): void {
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      let sum = 0;
      for (let k = 0; k < size; k += 1) {
        sum += (a[row * size + k] as number) * (b[k * size + column] as number);
      }
      into[row * size + column] = sum;
    }
  }
}

export function multiplyTransposed(
  a: Float64Array,
  b: Float64Array,
  into: Float64Array,
  size: number,
): void {
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      let sum = 0;
      for (let k = 0; k < size; k += 1) {
        sum += (a[row * size + k] as number) * (b[column * size + k] as number);
      }
      into[row * size + column] = sum;
    }
  }
}
