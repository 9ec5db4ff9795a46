/** Makes a forgotten case in a `switch` over a union a type error, and a bug report at run time. */
export function assertNever(value: never): never {
  throw new Error(`Unhandled case: ${JSON.stringify(value)}`);
}
