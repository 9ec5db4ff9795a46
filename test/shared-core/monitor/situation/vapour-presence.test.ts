import { describe, expect, test } from 'vitest';
import type { HeadState } from '../../../../shared-core/monitor/situation/vapour-filter.ts';
import {
  createVapourPresence,
  type VapourPresence,
} from '../../../../shared-core/monitor/situation/vapour-presence.ts';

const noise = { whiteSdK: 0.03, slowSdK: 0.04 };

function state(wet: number, bulbC: number, vapourC = 78.4): HeadState {
  return { bulbC, bulbRateKPerS: 0, vapourC, vapourSdK: 0.2, rateKPerS: 0, rateSdKPerS: 0.01, wet };
}

/** Feeds seconds from `fromS` on; what was said of each. */
function feed(
  presence: VapourPresence,
  fromS: number,
  heads: readonly HeadState[],
  isHeatOff = false,
) {
  return heads.map((head, index) => presence.see({ timeS: fromS + index, head, noise, isHeatOff }));
}

function bathedAt(timeS: number): VapourPresence {
  const presence = createVapourPresence();
  presence.begin(timeS);
  feed(presence, timeS, [state(0.9, 78.4)]);
  return presence;
}

describe('vapour at the bulb', () => {
  test('that is only in doubt is not absent, and the bulb not left alone', () => {
    const presence = bathedAt(100);
    feed(presence, 101, [state(0.5, 78.2), state(0.5, 78), state(0.5, 77.8)]);
    expect(presence.at(110)).toEqual({
      recededSinceS: null,
      absentS: 0,
      leftAloneS: 0,
      longestBreakS: 0,
    });
  });

  test('has gone when the filter has been sure of it for three seconds, since it was last there', () => {
    const presence = bathedAt(100);
    expect(feed(presence, 101, [state(0.1, 77), state(0.1, 76), state(0.1, 75)])).toEqual([
      'as-before',
      'as-before',
      'gone',
    ]);
    expect(presence.at(110)).toEqual({
      recededSinceS: 100,
      absentS: 10,
      leftAloneS: 10,
      longestBreakS: 0,
    });
  });

  test('has not gone while the bulb has hardly cooled, whatever the filter believes', () => {
    // Half a kelvin, or four times the noise where that is more.
    expect(feed(bathedAt(100), 101, Array(10).fill(state(0.1, 78)))).toEqual(
      Array(10).fill('as-before'),
    );
  });

  test('has not gone by seconds that are not in a row', () => {
    const heads = [state(0.1, 77), state(0.1, 77), state(0.5, 77), state(0.1, 77), state(0.1, 77)];
    expect(feed(bathedAt(100), 101, heads)).toEqual(Array(5).fill('as-before'));
  });

  test('is gone at the first reading of a slow logger that shows it', () => {
    const presence = bathedAt(100);
    expect(presence.see({ timeS: 160, head: state(0.1, 60), noise, isHeatOff: false })).toBe(
      'gone',
    );
    expect(presence.at(160).recededSinceS).toBe(157);
  });

  test('has come back when the filter has been sure of it; the break is remembered', () => {
    const presence = bathedAt(100);
    feed(presence, 101, Array(60).fill(state(0.1, 70)));
    expect(feed(presence, 161, Array(3).fill(state(0.9, 77)))).toEqual([
      'as-before',
      'as-before',
      'come',
    ]);
    expect(presence.at(163)).toEqual({
      recededSinceS: null,
      absentS: 0,
      leftAloneS: 0,
      longestBreakS: 61,
    });
  });

  test('has not come back while it is only somewhat likelier than not', () => {
    const presence = bathedAt(100);
    feed(presence, 101, Array(60).fill(state(0.1, 70)));
    expect(feed(presence, 161, Array(30).fill(state(0.6, 70)))).toEqual(
      Array(30).fill('as-before'),
    );
  });

  test.each([1, 4, 60])(
    'has come back by three readings that say so, not by one, where they come every %s s',
    (everyS) => {
      const presence = bathedAt(100);
      feed(presence, 101, Array(60).fill(state(0.1, 70)));
      const seen = [0.9, 0.1, 0.9, 0.9, 0.9].map((wet, index) =>
        presence.see({
          timeS: 160 + everyS * (index + 1),
          head: state(wet, 77),
          noise,
          isHeatOff: false,
        }),
      );
      expect(seen).toEqual(['as-before', 'as-before', 'as-before', 'as-before', 'come']);
    },
  );

  test('has not come back by an odd reading and the silence after it', () => {
    const presence = bathedAt(100);
    feed(presence, 101, Array(60).fill(state(0.1, 70)));
    expect(feed(presence, 161, [state(0.9, 74)])).toEqual(['as-before']);
    expect(presence.see({ timeS: 167, head: state(0.9, 70), noise, isHeatOff: false })).toBe(
      'as-before',
    );
    expect(presence.see({ timeS: 168, head: state(0.1, 70), noise, isHeatOff: false })).toBe(
      'as-before',
    );
  });

  test('has not come back over a heat that is off while the bulb goes on cooling, and has once it warms', () => {
    const cooling = (fromC: number) =>
      Array.from({ length: 60 }, (_, second) => state(0.9, fromC - 0.03 * second));
    const off = bathedAt(100);
    feed(off, 101, Array(60).fill(state(0.1, 72)), true);
    expect(feed(off, 161, cooling(72), true)).toEqual(Array(60).fill('as-before'));
    expect(
      feed(
        off,
        221,
        [70.4, 71, 72, 73].map((bulbC) => state(0.9, bulbC)),
        true,
      ),
    ).toEqual(['as-before', 'as-before', 'as-before', 'come']);
    const on = bathedAt(100);
    feed(on, 101, Array(60).fill(state(0.1, 72)));
    expect(feed(on, 161, cooling(72))).toContain('come');
  });

  test('that stays below still warms a bulb: it is absent, but the bulb is not left alone', () => {
    const presence = bathedAt(100);
    feed(presence, 101, [...Array(20).fill(state(0.1, 60)), ...Array(20).fill(state(0.1, 62.5))]);
    expect(presence.at(141)).toMatchObject({ absentS: 41, leftAloneS: 20, longestBreakS: 21 });
  });
});
