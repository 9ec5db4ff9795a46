import { describe, expect, test } from 'vitest';
import {
  type BlindEvent,
  blindAfter,
  guessesOf,
  noGuesses,
} from '../../../renderer/blind/blind-state.ts';

const stateAfter = (...events: readonly BlindEvent[]) => events.reduce(blindAfter, noGuesses);

describe('blindAfter', () => {
  test('keeps one guess of each kind a group; a later one takes its place, one taken back is gone', () => {
    const state = stateAfter(
      { type: 'guessed', timeS: 900 },
      { type: 'guessed', timeS: 950 },
      { type: 'kind-chosen', kind: 'heat-off' },
      { type: 'group-chosen', group: 'B' },
      { type: 'guessed', timeS: 2800 },
      { type: 'guessed', timeS: -5 },
      { type: 'group-chosen', group: 'C' },
      { type: 'guessed', timeS: 1 },
      { type: 'taken-back', group: 'C', kind: 'heat-off' },
    );
    expect(guessesOf(state)).toEqual([
      { group: 'A', kind: 'plateau-starts', timeS: 950 },
      { group: 'B', kind: 'heat-off', timeS: 0 },
    ]);
  });

  test('adds groups up to H and goes to the new one', () => {
    const added = Array.from({ length: 9 }, (): BlindEvent => ({ type: 'group-added' }));
    const state = stateAfter(...added);
    expect([state.groups.join(''), state.group]).toEqual(['ABCDEFGH', 'H']);
  });

  test('reveals nothing without a guess; once revealed, guesses stand until begun anew', () => {
    expect(stateAfter({ type: 'revealed' }).isRevealed).toBe(false);
    const revealed = stateAfter({ type: 'guessed', timeS: 900 }, { type: 'revealed' });
    expect(revealed.isRevealed).toBe(true);
    expect(blindAfter(revealed, { type: 'guessed', timeS: 1 })).toBe(revealed);
    expect(blindAfter(revealed, { type: 'begun-anew' })).toEqual(noGuesses);
  });
});
