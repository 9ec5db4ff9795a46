import ts from 'typescript';

/** What a checked line claims about the value of its expression. */
export type Claim =
  | { readonly kind: 'near'; readonly value: number; readonly tolerance: number }
  | { readonly kind: 'equal'; readonly json: unknown }
  | { readonly kind: 'throws'; readonly errorName: string };

/** One checked expression with the set-up statements before it, or why it cannot be read. */
export type ExampleStep =
  | {
      readonly ok: true;
      readonly line: number;
      readonly setUp: string;
      readonly expression: string;
      readonly claim: Claim;
    }
  | { readonly ok: false; readonly line: number; readonly problem: string };

const claimMark = /\/\/\s*(≈|=>|throws\b)\s*(.*)$/;
const nearForm = /^([-+−]?\d[\d.]*(?:e[-+]?\d+)?)\s*±\s*(\d[\d.]*(?:e[-+]?\d+)?)/i;

/**
 * Reads the text of an `@example` block. Lines up to and including one that ends in
 * `// ≈ number ± tolerance`, `// => JSON` or `// throws ErrorName` form a step.
 *
 * @param firstLine number of the line on which the text starts
 */
export function exampleSteps(text: string, firstLine: number): readonly ExampleStep[] {
  const steps: ExampleStep[] = [];
  let pending: string[] = [];
  let line = firstLine - 1;
  for (const written of text.split('\n')) {
    line += 1;
    if (written.trim().startsWith('```')) continue;
    const found = claimMark.exec(written);
    pending.push(found ? written.slice(0, found.index) : written);
    if (!found) continue;
    steps.push(readStep(pending.join('\n'), found[1] ?? '', found[2] ?? '', line));
    pending = [];
  }
  if (steps.length === 0 || pending.join('').trim() !== '') {
    steps.push({ ok: false, line, problem: 'the example ends without a checked value' });
  }
  return steps;
}

function readStep(code: string, mark: string, rest: string, line: number): ExampleStep {
  const parsed = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022);
  const last = parsed.statements.at(-1);
  if (last === undefined || !ts.isExpressionStatement(last)) {
    return { ok: false, line, problem: 'the checked line is not an expression' };
  }
  const claim = readClaim(mark, rest.trim());
  if (typeof claim === 'string') return { ok: false, line, problem: claim };
  return {
    ok: true,
    line,
    setUp: code.slice(0, last.getFullStart()),
    expression: last.expression.getText(parsed),
    claim,
  };
}

function readClaim(mark: string, rest: string): Claim | string {
  if (mark === 'throws') return { kind: 'throws', errorName: rest };
  if (mark === '=>') {
    try {
      return { kind: 'equal', json: JSON.parse(rest) as unknown };
    } catch {
      return `"${rest}" is not JSON`;
    }
  }
  const near = nearForm.exec(rest);
  if (near === null) return `"${rest}" is not "number ± tolerance"`;
  const [, value = '', tolerance = ''] = near;
  return { kind: 'near', value: Number(value.replace('−', '-')), tolerance: Number(tolerance) };
}
