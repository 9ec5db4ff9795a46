/** Minimises the sum of 2(√(1 + r²) − 1): least squares for small residuals, absolute for large. */
export function fitLeastSquares(
  residualsOf: (parameters: readonly number[]) => readonly number[],
  start: readonly number[],
): readonly number[] {
  let parameters = start;
  let residuals = residualsOf(parameters);
  let damping = 1e-3;
  for (let iteration = 0; iteration < 2000; iteration++) {
    const { normal, gradient } = normalEquations(residualsOf, parameters, residuals);
    const damped = normal.map((row, i) => row.map((v, j) => (i === j ? v * (1 + damping) : v)));
    const step = solveLinear(damped, gradient);
    const candidate = parameters.map((value, i) => value - (step[i] ?? 0));
    const next = residualsOf(candidate);
    const gain = robustSum(residuals) - robustSum(next);
    if (!(gain >= 0)) {
      damping *= 4;
      if (damping > 1e12) return parameters;
      continue;
    }
    parameters = candidate;
    residuals = next;
    damping = Math.max(damping / 6, 1e-12);
    if (gain < 1e-12 * robustSum(next)) return parameters;
  }
  return parameters;
}

function robustSum(residuals: readonly number[]): number {
  return residuals.reduce((sum, r) => sum + 2 * (Math.hypot(1, r) - 1), 0);
}

/** Gauss–Newton equations with each residual weighted by 1/√(1 + r²), central differences. */
function normalEquations(
  residualsOf: (parameters: readonly number[]) => readonly number[],
  parameters: readonly number[],
  residuals: readonly number[],
): { readonly normal: readonly (readonly number[])[]; readonly gradient: readonly number[] } {
  const columns = parameters.map((_, column) => {
    const shifted = (by: number) =>
      residualsOf(parameters.map((v, i) => (i === column ? v + by : v)));
    const up = shifted(1e-6);
    const down = shifted(-1e-6);
    return up.map((value, row) => (value - (down[row] ?? 0)) / 2e-6);
  });
  const weights = residuals.map((r) => 1 / Math.hypot(1, r));
  const product = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, value, row) => sum + value * (b[row] ?? 0) * (weights[row] ?? 0), 0);
  return {
    normal: columns.map((a) => columns.map((b) => product(a, b))),
    gradient: columns.map((a) => product(a, residuals)),
  };
}

/** Gaussian elimination with partial pivoting. */
function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  const size = rows.length;
  const at = (i: number, j: number) => rows[i]?.[j] ?? 0;
  for (let pivot = 0; pivot < size; pivot++) {
    let best = pivot;
    for (let i = pivot + 1; i < size; i++)
      if (Math.abs(at(i, pivot)) > Math.abs(at(best, pivot))) best = i;
    const swap = rows[best] ?? [];
    rows[best] = rows[pivot] ?? [];
    rows[pivot] = swap;
    for (let i = pivot + 1; i < size; i++) {
      const factor = at(i, pivot) / at(pivot, pivot);
      rows[i] = (rows[i] ?? []).map((value, j) => value - factor * at(pivot, j));
    }
  }
  const solution = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    const known = solution.reduce((sum, value, j) => (j > i ? sum + at(i, j) * value : sum), 0);
    solution[i] = (at(i, size) - known) / at(i, i);
  }
  return solution;
}
