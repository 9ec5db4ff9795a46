/** How functions fail: results, ranges, exhaustiveness. */
export { assertNever } from './assert-never.ts';
export { OutOfRangeError, requireInRange } from './out-of-range-error.ts';
export { parseJson } from './parse-json.ts';
export { fail, type Result, succeed } from './result.ts';
