/** Listeners by name. Emitting calls those present at that moment, in the order they came. */
export interface Listeners<Bodies> {
  on<N extends keyof Bodies>(name: N, listener: (body: Bodies[N]) => void): () => void;
  emit<N extends keyof Bodies>(name: N, body: Bodies[N]): void;
}

export function createListeners<Bodies>(): Listeners<Bodies> {
  const byName = new Map<keyof Bodies, Set<(body: never) => void>>();
  return {
    on: (name, listener) => {
      const listeners = byName.get(name) ?? new Set();
      byName.set(name, listeners);
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    emit: (name, body) => {
      for (const listener of [...(byName.get(name) ?? [])]) listener(body as never);
    },
  };
}
