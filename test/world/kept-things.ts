import type { Judge } from './judge.ts';

/** How a thing stands that was never kept, or was taken away. */
export const nothing = '';

/**
 * What people were told is kept beside the record of a run: names, corrections, measurements, ferments, set-ups. Of each thing one value
 * stands: the one that was said to be kept last, or one that was asked for since and got no answer, or a bad one.
 */
export interface KeptThings {
  /** Somebody asks for it; what is answered is to be called once the program says that it is kept. */
  wish(thing: string, value: string): () => void;
  /** As it was said to be kept last. */
  standing(thing: string): string;
  /** Holds what the program shows against what it said. */
  check(judge: Judge, found: ReadonlyMap<string, string>): void;
}

interface Thing {
  kept: string;
  wished: string[];
}

export function createKeptThings(): KeptThings {
  const things = new Map<string, Thing>();
  return {
    wish(name, value) {
      const thing = things.get(name) ?? { kept: nothing, wished: [] };
      things.set(name, thing);
      thing.wished.push(value);
      return () => {
        thing.kept = value;
        thing.wished = [];
      };
    },
    standing: (name) => things.get(name)?.kept ?? nothing,
    check(judge, found) {
      for (const name of new Set([...things.keys(), ...found.keys()])) {
        const { kept, wished } = things.get(name) ?? { kept: nothing, wished: [] };
        const shown = found.get(name) ?? nothing;
        if (shown === kept || wished.includes(shown)) continue;
        const said = `"${kept}"${wished.length === 0 ? '' : `, or one of "${wished.join('", "')}"`}`;
        judge.violated('kept-stays-kept', `${name} is "${shown}", was said to be ${said}.`);
      }
    },
  };
}
