/**
 * The same function, with its last results kept: pressures repeat from reading to reading. Results must
 * be immutable; what is remembered never changes an answer.
 */
export function remember<T>(count: number, of: (key: number) => T): (key: number) => T {
  const known = new Map<number, T>();
  return (key) => {
    const found = known.get(key);
    if (found !== undefined) return found;
    const value = of(key);
    const oldest = known.keys().next();
    if (known.size >= count && !oldest.done) known.delete(oldest.value);
    known.set(key, value);
    return value;
  };
}
