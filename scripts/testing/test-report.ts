import { z } from 'zod';
import { parseJson } from '../../shared-core/result/index.ts';

/** The part of vitest's JSON report that the tally needs. */
const testReportSchema = z.object({
  numPassedTests: z.number().int(),
  numFailedTests: z.number().int(),
  numPendingTests: z.number().int(),
  numTodoTests: z.number().int(),
  testResults: z.array(
    z.object({ status: z.string(), assertionResults: z.array(z.object({ status: z.string() })) }),
  ),
});

/**
 * Passed and failed tests of a vitest run. A file that could not be loaded counts as one failure, and so
 * does each skipped test: a check that did not run has not passed. No report at all is one failure.
 */
export function tallyTestReport(text: string | null): { passed: number; failed: number } {
  const parsed = text === null ? undefined : testReportSchema.safeParse(parseJson(text));
  if (parsed?.success !== true) return { passed: 0, failed: 1 };
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, testResults } =
    parsed.data;
  const brokenFiles = testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((result) => result.status === 'failed'),
  ).length;
  const nothingRan = testResults.length === 0 ? 1 : 0;
  return {
    passed: numPassedTests,
    failed: numFailedTests + numPendingTests + numTodoTests + brokenFiles + nothingRan,
  };
}
