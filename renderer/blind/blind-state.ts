import { assertNever, say } from '#shared-core';

/** What a class guesses. */
export const guessKinds = ['plateau-starts', 'heat-off'] as const;
export type GuessKind = (typeof guessKinds)[number];

export const guessNames: Readonly<Record<GuessKind, string>> = {
  'plateau-starts': say('Plateau starts'),
  'heat-off': say('Heat off'),
};

/** Groups are letters, never people. */
export const groupLetters = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'] as const;
export type Group = (typeof groupLetters)[number];

export type GroupGuesses = Readonly<Partial<Record<GuessKind, number>>>;

/** What the class has guessed so far, and whether the record is shown. */
export interface BlindState {
  readonly groups: readonly Group[];
  readonly group: Group;
  readonly kind: GuessKind;
  /** Time of each guess [s]. */
  readonly guesses: Readonly<Partial<Record<Group, GroupGuesses>>>;
  readonly isRevealed: boolean;
}

export type BlindEvent =
  | { readonly type: 'group-added' }
  | { readonly type: 'group-chosen'; readonly group: Group }
  | { readonly type: 'kind-chosen'; readonly kind: GuessKind }
  | { readonly type: 'guessed'; readonly timeS: number }
  | { readonly type: 'taken-back'; readonly group: Group; readonly kind: GuessKind }
  | { readonly type: 'revealed' }
  | { readonly type: 'begun-anew' };

export const noGuesses: BlindState = {
  groups: ['A', 'B', 'C'],
  group: 'A',
  kind: 'plateau-starts',
  guesses: {},
  isRevealed: false,
};

/** Guesses stand once the record is revealed: only beginning anew opens them again. */
export function blindAfter(state: BlindState, event: BlindEvent): BlindState {
  if (event.type === 'begun-anew') return noGuesses;
  if (state.isRevealed) return state;
  switch (event.type) {
    case 'group-added': {
      const group = groupLetters[state.groups.length];
      return group ? { ...state, groups: [...state.groups, group], group } : state;
    }
    case 'group-chosen':
      return { ...state, group: event.group };
    case 'kind-chosen':
      return { ...state, kind: event.kind };
    case 'guessed': {
      const { group, kind, guesses } = state;
      const timeS = Math.max(0, event.timeS);
      return { ...state, guesses: { ...guesses, [group]: { ...guesses[group], [kind]: timeS } } };
    }
    case 'taken-back': {
      const { [event.kind]: _, ...kept } = state.guesses[event.group] ?? {};
      return { ...state, guesses: { ...state.guesses, [event.group]: kept } };
    }
    case 'revealed':
      return guessesOf(state).length === 0 ? state : { ...state, isRevealed: true };
    default:
      return assertNever(event);
  }
}

/** One guess as it stands. */
export interface Guess {
  readonly group: Group;
  readonly kind: GuessKind;
  readonly timeS: number;
}

/** All guesses, group by group. */
export function guessesOf(state: BlindState): readonly Guess[] {
  return state.groups.flatMap((group) =>
    guessKinds.flatMap((kind) => {
      const timeS = state.guesses[group]?.[kind];
      return timeS === undefined ? [] : [{ group, kind, timeS }];
    }),
  );
}
