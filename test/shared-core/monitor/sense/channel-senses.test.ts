import { describe, expect, test } from 'vitest';
import { createChannelSenses } from '../../../../shared-core/monitor/sense/channel-senses.ts';

const pot = (atS: number, value: number, unit = '°C') => ({ channel: 'pot', value, unit, atS });

/** A pot that was heard every so many seconds from 0 to `untilS`. */
function heard(everyS: number, untilS: number) {
  const senses = createChannelSenses();
  for (let atS = 0; atS <= untilS; atS += everyS) {
    senses.see(pot(atS, 88));
    senses.second(atS);
  }
  return senses;
}

describe('a channel beside the head', () => {
  test('shows what came last, and nothing before it was heard', () => {
    const senses = heard(1, 10);
    expect([senses.value('pot'), senses.latest('pot'), senses.value('room')]).toEqual([
      88,
      pot(10, 88),
      null,
    ]);
  });

  test('is silent after a quarter of a minute, told once, and again when it speaks', () => {
    const senses = heard(1, 10);
    expect([senses.second(25), senses.value('pot')]).toEqual([[], 88]);
    expect(senses.second(26)).toEqual([{ channel: 'pot', isSilent: true, lastS: 10 }]);
    expect([senses.second(27), senses.value('pot'), senses.latest('pot')]).toEqual([
      [],
      null,
      null,
    ]);
    senses.see(pot(30, 87));
    expect(senses.second(30)).toEqual([{ channel: 'pot', isSilent: false, lastS: 30 }]);
    expect(senses.value('pot')).toBe(87);
  });

  test('that comes every twenty seconds is silent after three of them', () => {
    const senses = heard(20, 200);
    expect([senses.second(260), senses.second(261).length]).toEqual([[], 1]);
  });

  test('that was heard once is waited for as long as a slow logger may take', () => {
    const senses = heard(1, 0);
    expect([senses.second(180), senses.second(181).length]).toEqual([[], 1]);
  });

  test('is believed up to fifteen kelvin a second, in either direction, and as far as the time since it was heard allows', () => {
    const shownOf = (atS: number, value: number) => {
      const senses = heard(1, 10);
      senses.see(pot(atS, value));
      return senses.value('pot');
    };
    expect([
      shownOf(11, 103),
      shownOf(11, 103.1),
      shownOf(11, 73),
      shownOf(11, 72.9),
      shownOf(12, 118),
      shownOf(12, 118.1),
      shownOf(10, 103),
    ]).toEqual([103, 88, 73, 88, 118, 88, 103]);
  });

  test('that has jumped is believed when others like it have come for three seconds', () => {
    const senses = heard(1, 10);
    // Too far off to have come about in four seconds.
    const shown = [160, 161, 162, 160].map((value, index) => {
      senses.see(pot(11 + index, value));
      return senses.value('pot');
    });
    expect(shown).toEqual([88, 88, 88, 160]);
  });

  test('that jumps to and fro is not, and what was pending is forgotten once it is back', () => {
    const jumping = heard(1, 10);
    for (const [atS, value] of [
      [11, 0],
      [12, 180],
      [13, 0],
      [14, 180],
      [15, 0],
    ] as const)
      jumping.see(pot(atS, value));
    expect(jumping.value('pot')).toBe(88);
    const back = heard(1, 10);
    for (const [atS, value] of [
      [11, 40],
      [12, 88],
      [13, 88],
      [14, 40],
    ] as const)
      back.see(pot(atS, value));
    expect(back.value('pot')).toBe(88);
  });

  test('that is no temperature may jump: a receiver is changed, a heater switched', () => {
    const senses = createChannelSenses();
    senses.see(pot(0, 200, 'g'));
    senses.see(pot(1, 80, 'g'));
    expect(senses.value('pot')).toBe(80);
  });
});
