import { expect, test } from 'vitest';
import { tallyTestReport } from '../../../scripts/testing/test-report.ts';

const report = (change: object) =>
  JSON.stringify({
    numPassedTests: 3,
    numFailedTests: 0,
    numPendingTests: 0,
    numTodoTests: 0,
    testResults: [{ status: 'passed', assertionResults: [{ status: 'passed' }] }],
    ...change,
  });

test('passed and failed tests are counted one by one', () => {
  const failing = { status: 'failed', assertionResults: [{ status: 'failed' }] };
  expect([
    tallyTestReport(report({})),
    tallyTestReport(report({ numFailedTests: 2, testResults: [failing] })),
  ]).toEqual([
    { passed: 3, failed: 0 },
    { passed: 3, failed: 2 },
  ]);
});

test('what did not run has not passed: skipped, to do, unloadable, empty or without report', () => {
  expect([
    tallyTestReport(report({ numPendingTests: 2 })),
    tallyTestReport(report({ numTodoTests: 1 })),
    tallyTestReport(report({ testResults: [{ status: 'failed', assertionResults: [] }] })),
    tallyTestReport(report({ numPassedTests: 0, testResults: [] })),
    tallyTestReport('{"half'),
    tallyTestReport('{}'),
    tallyTestReport(null),
  ]).toEqual([
    { passed: 3, failed: 2 },
    { passed: 3, failed: 1 },
    { passed: 3, failed: 1 },
    { passed: 0, failed: 1 },
    { passed: 0, failed: 1 },
    { passed: 0, failed: 1 },
    { passed: 0, failed: 1 },
  ]);
});
