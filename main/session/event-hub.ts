import type { EventBody, EventName } from '#shared-core';

type Listener<N extends EventName> = (body: EventBody<N>) => void;

/** Hands events to whoever listens; a listener that throws harms neither sender nor the others. */
export interface EventHub {
  emit<N extends EventName>(name: N, body: EventBody<N>): void;
  on<N extends EventName>(name: N, listener: Listener<N>): () => void;
}

export function createEventHub(): EventHub {
  const listeners = new Map<EventName, Set<(body: never) => void>>();
  return {
    emit(name, body) {
      for (const listener of listeners.get(name) ?? []) {
        try {
          listener(body as never);
        } catch (error) {
          console.error(`A listener of "${name}" failed:`, error);
        }
      }
    },
    on(name, listener) {
      const ofName = listeners.get(name) ?? new Set();
      listeners.set(name, ofName);
      ofName.add(listener);
      return () => ofName.delete(listener);
    },
  };
}
