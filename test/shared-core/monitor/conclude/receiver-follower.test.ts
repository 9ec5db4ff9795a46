import { expect, test } from 'vitest';
import { createReceiverFollower } from '../../../../shared-core/monitor/conclude/receiver-follower.ts';
import { createMarksLedger } from '../../../../shared-core/monitor/marks-ledger.ts';
import { createChannelSenses } from '../../../../shared-core/monitor/sense/channel-senses.ts';
import type { MarkBody } from '../../../../shared-core/run/index.ts';
import { factsOf } from '../words/facts.ts';

const { situation } = factsOf();
const before = { ...situation, arrivedS: null, heldS: null };

/** A balance that is heard each second up to `heardUntilS` of a run in which vapour arrives at 100 s. */
function follow(
  shown: (timeS: number) => number,
  unit: string,
  heardUntilS: number,
  untilS: number,
) {
  const marks = createMarksLedger();
  const channels = createChannelSenses();
  const follower = createReceiverFollower(marks);
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    if (timeS <= heardUntilS)
      channels.see({ channel: 'receiver', value: shown(timeS), unit, atS: timeS });
    channels.second(timeS);
    follower.second(timeS, channels, timeS < 100 ? before : situation);
  }
  let markId = 0;
  const mark = (timeS: number, body: MarkBody) => {
    markId += 1;
    marks.add({ kind: 'mark', timeS, markId, mark: body });
  };
  return { follower, mark };
}

const filling = (timeS: number) => 80 + 0.02 * Math.max(0, timeS - 99);

test('a balance tells grams, which are as many millilitres of strong spirit; a level tells millilitres', () => {
  const byMass = follow(filling, 'g', 599, 599).follower;
  const byLevel = follow(filling, 'mL', 599, 599).follower;
  expect([byMass.weighedMl(), byLevel.weighedMl()]).toEqual([
    // 90 % vol weighs 0.829 g/mL at 20 °C (OIML R 22).
    expect.closeTo(10 / 0.829, 6),
    expect.closeTo(10, 6),
  ]);
});

test('what people booked goes before what a balance says, and a silent balance says nothing', () => {
  const { follower, mark } = follow(filling, 'g', 599, 599);
  expect(follower.collectedMl()).toBeCloseTo(10 / 0.829, 6);
  mark(600, { type: 'volume-read', volumeMl: 9 });
  expect([follower.collectedMl(), follower.weighedMl()]).toEqual([
    9,
    expect.closeTo(10 / 0.829, 6),
  ]);
  const silent = follow(filling, 'g', 580, 599).follower;
  expect([silent.weighedMl(), silent.collectedMl()]).toEqual([null, null]);
});

test('nothing is collected where the balance stands still under a head that has held, and the heat is not off', () => {
  const still = follow(() => 80, 'g', 599, 599);
  const flowing = follow(filling, 'g', 599, 599);
  expect([
    still.follower.isNothingCollected(situation),
    still.follower.isNothingCollected({ ...situation, heldS: null }),
    flowing.follower.isNothingCollected(situation),
    still.follower.isNothingBooked(situation),
  ]).toEqual([true, false, false, false]);
  still.mark(600, { type: 'heat-off' });
  expect(still.follower.isNothingCollected(situation)).toBe(false);
});

test('without a balance the readings of a person tell the same', () => {
  const { follower, mark } = follow(() => 80, 'g', 0, 599);
  mark(200, { type: 'volume-read', volumeMl: 3 });
  expect(follower.isNothingCollected(situation)).toBe(false);
  mark(500, { type: 'volume-read', volumeMl: 3 });
  expect([
    follower.isNothingCollected(situation),
    follower.isNothingBooked(situation),
    follower.isNothingBooked({ ...situation, heldS: null }),
  ]).toEqual([true, true, false]);
});
