import { describe, expect, test } from 'vitest';
import {
  alarmCatalogue,
  type Caution,
  cautionOf,
  cautionsAt,
  cautionWords,
  commonPractice,
  pearFermentSetup,
} from '#shared-core';
import { cautionPlaces } from '../../../shared-core/cautions/caution.ts';
import { cautions, type KnownCaution } from '../../../shared-core/cautions/cautions.ts';
import { applyBatchAction } from '../../../shared-core/column/apply-batch-action.ts';
import type { BatchEvent } from '../../../shared-core/column/batch-event.ts';
import { buildBatchMachine, stepBatchMachine } from '../../../shared-core/column/batch-machine.ts';
import { lightVolatiles } from '../../../shared-core/column/light-volatile.ts';
import { alarms } from '../../../shared-core/snapshot/alarm.ts';

const list: readonly Caution[] = cautions;

describe('the list of cautions', () => {
  test('has one entry for a hazard, in whole sentences, each said in at least README.md and Cautions', () => {
    expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
    expect(list.filter(({ act, because }) => !/\.$/.test(act) || !/\.$/.test(because))).toEqual([]);
    expect(new Set(cautionPlaces.filter((place) => cautionsAt(place).length === 0))).toEqual(
      new Set(),
    );
    expect(commonPractice).toMatch(/no source/);
  });

  /** What people at a classroom still are hurt by, written down apart from the list: a hazard struck from it is missed. */
  const hazards: readonly (readonly [string, RegExp])[] = [
    ['trust in the program', /no safety device/],
    ['what is forbidden', /Local rules come first/],
    ['a closed rig', /Never close the rig/],
    ['froth and a full pot', /Strain and degas .* half at most/],
    ['superheated liquid', /Fresh boiling stones before each heating, into the cold pot/],
    ['hoses and joints that come off', /Clips on every hose and joint/],
    ['no cooling water', /Cooling water first/],
    ['flames, sparks and vapour', /No flame, no spark, fresh air/],
    ['board and laptop', /board and laptop above spill height/],
    ['heat that stays', /heat that can be dropped at once/],
    ['mercury', /No mercury thermometer/],
    [
      'heat that comes off late because the head reads low',
      /whole bulb level with the lower edge of the side arm/,
    ],
    ['cable in hot ethanol', /metal tip .* PTFE or silicone/],
    ['eyes, hair and sleeves', /Eye protection on, hair tied back, sleeves close/],
    ['nobody there', /Never leave a heated still alone/],
    ['a dry pot', /Never boil the pot dry/],
    ['a hot head', /Hands off a hot head/],
    ['hot glass', /Glass and mantle stay hot/],
    ['steam', /Steam burns/],
    ['fire', /everybody out/],
    ['a flame nobody sees', /ethanol flame is pale/],
    ['a burn', /Cool a burn at once/],
    ['a spill', /spilt or smelt/],
    ['a number taken for a measurement', /Strength from the head temperature is an estimate/],
    ['a sealed vessel that ferments', /Never seal a vessel that ferments/],
    ['froth in the air lock', /Leave room for froth/],
    ['gas in a cellar', /Air the room where it ferments/],
    ['tasting the ferment', /Nothing of the ferment is tasted/],
    ['drinking it', /Nobody drinks any of it/],
    ['a bottle without a label', /Label what is collected/],
    ['disposal', /Dispose of distillate and residue/],
    ['burning a sample: leave', /Only if the rules here allow it/],
    ['burning a sample: the still', /Heat off, still cold, receiver closed and away/],
    ['burning a sample: how much, where', /At most 1 mL, in a dish on a heat-proof mat/],
    ['burning a sample: the hand', /A long splint/],
    ['burning a sample: the class', /A screen before the class/],
    ['burning a sample: the pale flame', /Lights dimmed/],
    ['burning a sample: ending it', /A lid to smother/],
    ['burning a sample: the bottle', /Never pour onto a flame or a warm dish; never refill/],
  ];
  test('names every hazard of that table and no other', () => {
    expect(hazards).toHaveLength(cautions.length);
  });

  test.each(hazards)('warns of %s', (_, words) => {
    expect(cautions.filter((caution) => words.test(cautionWords(caution)))).toHaveLength(1);
  });

  test('is confirmed before heat exactly where an entry says how', () => {
    const checked = list.filter(({ check }) => check !== undefined);
    expect(cautionsAt('prepare')).toEqual(checked);
  });

  test('stands in prompts exactly where it says so: as what happens otherwise, or with the act', () => {
    const said = alarms.flatMap((alarm): readonly KnownCaution[] => {
      const { caution, consequence } = alarmCatalogue[alarm];
      return [
        ...cautions.filter(({ because }) => because === consequence),
        ...(caution === null ? [] : [cautionOf(caution)]),
      ];
    });
    expect(new Set(said)).toEqual(new Set(cautionsAt('prompt')));
  });
});

test('methanol comes over in every fraction, as the cautions say, and most of it in the main one', () => {
  const setup = pearFermentSetup();
  const machine = buildBatchMachine(setup);
  const events: readonly BatchEvent[] = [
    ...(setup.schedule ?? []),
    // As in the demonstration: first fraction, main fraction, tail.
    { timeS: 1080, kind: 'receiver-changed' },
    { timeS: 2900, kind: 'receiver-changed' },
    { timeS: 4800, kind: 'heat-off' },
  ];
  for (const event of events) {
    while (machine.stepCount * machine.stepS < event.timeS) stepBatchMachine(machine);
    applyBatchAction(machine, event);
  }
  const methanol = lightVolatiles.findIndex(({ name }) => name === 'methanolMgPerL');
  const [first = 0, main = 0, tail = 0] = machine.collection.receivers.map(
    ({ traceMol }) => traceMol[methanol] ?? 0,
  );
  const all = first + main + tail;
  expect(Math.min(first, main, tail) / all).toBeGreaterThan(0.01);
  expect(main / all).toBeGreaterThan(0.5);
});
