import { expect, test } from 'vitest';
import { parseJson } from '../../../shared-core/result/parse-json.ts';

test('what is no JSON is undefined, and a null that was written is not', () => {
  expect(parseJson('{"head":[78.4,null]}')).toEqual({ head: [78.4, null] });
  expect(parseJson('null')).toBeNull();
  expect(['', '{"head":78.', 'undefined', "{'head':1}"].map(parseJson)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});
