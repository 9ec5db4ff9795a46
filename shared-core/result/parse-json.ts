/**
 * What a text says, by the rule of ECMA-404; undefined where it is no JSON. A schema looks at it next: no schema of ours takes undefined
 * for something.
 *
 * @param text any text
 *
 * Source: ECMA-404.
 * @example
 * parseJson('{"head":78.4}') // => { "head": 78.4 }
 * parseJson('{"head":78.') ?? 'no JSON' // => "no JSON"
 */
export function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
