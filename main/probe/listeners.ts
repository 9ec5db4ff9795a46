import type { ProbeListeners } from './probe-hub.ts';

type Heard<N extends keyof ProbeListeners> = Parameters<ProbeListeners[N]>[0];

/** Who wants to hear what. A listener that throws is a bug there, and must not cost the others a reading. */
export interface Listeners {
  on<N extends keyof ProbeListeners>(name: N, listener: ProbeListeners[N]): () => void;
  tell<N extends keyof ProbeListeners>(name: N, heard: Heard<N>): void;
  count(name: keyof ProbeListeners): number;
  clear(): void;
}

type AnyListener = (heard: never) => void;

export function createListeners(): Listeners {
  const byName = new Map<keyof ProbeListeners, Set<AnyListener>>();
  const of = (name: keyof ProbeListeners): Set<AnyListener> => {
    const found = byName.get(name) ?? new Set();
    byName.set(name, found);
    return found;
  };
  return {
    on(name, listener) {
      of(name).add(listener);
      return () => of(name).delete(listener);
    },
    tell(name, heard) {
      for (const listener of of(name)) {
        try {
          listener(heard as never);
        } catch (error) {
          queueMicrotask(() => {
            throw error;
          });
        }
      }
    },
    count: (name) => of(name).size,
    clear: () => byName.clear(),
  };
}
