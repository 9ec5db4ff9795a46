import { isDeepStrictEqual } from 'node:util';
import ts from 'typescript';
import { type Claim, type ExampleStep, exampleSteps } from './example-steps.ts';
import type { DocExample } from './exported-functions.ts';

export interface ExampleOutcome {
  readonly line: number;
  /** Undefined when the example holds. */
  readonly problem: string | undefined;
}

type Runner = (...values: readonly unknown[]) => Promise<unknown>;
const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor as new (
  ...source: readonly string[]
) => Runner;

/** Runs every checked line of an example with the exports of `module` in scope. */
export async function runExample(
  example: DocExample,
  module: Readonly<Record<string, unknown>>,
): Promise<readonly ExampleOutcome[]> {
  const outcomes: ExampleOutcome[] = [];
  let setUp = '';
  for (const step of exampleSteps(example.text, example.line)) {
    if (step.ok) setUp += `${step.setUp}\n`;
    const problem = step.ok ? await runStep(step, setUp, module) : step.problem;
    outcomes.push({ line: step.line, problem });
  }
  return outcomes;
}

async function runStep(
  step: ExampleStep & { ok: true },
  setUp: string,
  module: Readonly<Record<string, unknown>>,
): Promise<string | undefined> {
  // Names set by the example may hide an export, so the set-up gets its own block.
  const body = `{ ${setUp}\nreturn (${step.expression}); }`;
  const problem = (text: string) => `${step.expression} ${text}`;
  try {
    const run = new AsyncFunction(...Object.keys(module), withoutTypes(body));
    const mismatch = compare(await run(...Object.values(module)), step.claim);
    return mismatch && problem(mismatch);
  } catch (error) {
    const name = error instanceof Error ? error.name : String(error);
    if (step.claim.kind === 'throws' && name === step.claim.errorName) return undefined;
    return problem(`throws ${error instanceof Error ? `${name}: ${error.message}` : name}`);
  }
}

function withoutTypes(body: string): string {
  const wrapped = ts.transpileModule(`async function example() ${body}`, {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
  }).outputText;
  return `${wrapped}\nreturn example();`;
}

/** How the actual value departs from the claim; undefined when it does not. */
export function compare(actual: unknown, claim: Claim): string | undefined {
  switch (claim.kind) {
    case 'throws':
      return `gives ${show(actual)}; it should throw ${claim.errorName}`;
    case 'equal':
      return holdsNaN(actual) || !isDeepStrictEqual(plainData(actual), claim.json)
        ? `gives ${show(actual)}, not ${JSON.stringify(claim.json)}`
        : undefined;
    case 'near': {
      // A last-bit allowance, so that "0.3 ± 0.1" holds for 0.4.
      const allowed = claim.tolerance * (1 + 1e-12) + Number.EPSILON * Math.abs(claim.value);
      const holds = typeof actual === 'number' && Math.abs(actual - claim.value) <= allowed;
      return holds ? undefined : `gives ${show(actual)}, not ${claim.value} ± ${claim.tolerance}`;
    }
  }
}

function plainData(value: unknown): unknown {
  const text = JSON.stringify(value);
  return text === undefined ? undefined : (JSON.parse(text) as unknown);
}

/** JSON writes NaN and infinities as null; that must never pass for a value. */
function holdsNaN(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  return (
    typeof value === 'object' &&
    value !== null &&
    Object.values(value).some((part) => holdsNaN(part))
  );
}

function show(value: unknown): string {
  return typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
}
