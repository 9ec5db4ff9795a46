import { describe, expect, test } from 'vitest';
import { type Fault, type FaultKind, faultKinds, shrinkFaults } from './fault.ts';
import { type PlantedFault, plantedFaults } from './planted-fault.ts';
import { runWorld } from './run-world.ts';
import type { WorldSetup } from './world-setup.ts';

/** Short worlds, and many faults in each; the command runs any number of an hour. */
const seeds = 30;
const shortS = 300;

const fault = (kind: FaultKind, fromS: number, toS: number): Fault => ({ kind, fromS, toS });

describe('a simulated world', () => {
  test('is the same to the last event when its seed is the same, and another for another seed', async () => {
    const once = await runWorld({ seed: 3, lengthS: 200 });
    const twice = await runWorld({ seed: 3, lengthS: 200 });
    const other = await runWorld({ seed: 4, lengthS: 200 });
    expect(twice).toEqual(once);
    expect(other.traceHash).not.toBe(once.traceHash);
  });

  test.each(Array.from({ length: seeds }, (_, index) => index + 1))(
    'keeps every promise in the world of seed %i',
    async (seed) => {
      expect((await runWorld({ seed, lengthS: shortS })).violation).toBeNull();
    },
  );

  test.each(faultKinds)('keeps every promise through %s alone', async (kind) => {
    const outcome = await runWorld({ seed: 5, lengthS: 180, faults: [fault(kind, 30, 70)] });
    expect(outcome.violation).toBeNull();
  });

  /** Found by seed 2026112970: no clock tells how long the power was off when somebody sets one meanwhile. */
  test('shows no old number as new where the clock was set back while the power was off', async () => {
    const faults = [
      fault('power-cut', 60, 300),
      fault('wall-clock-is-set', 200, 231),
      fault('probe-is-mute', 290, 325),
    ];
    expect((await runWorld({ seed: 98, lengthS: 360, faults })).violation).toBeNull();
  });

  /** Found by seed 2026113067: a sleep too short to be noticed made the age of what was heard before it too small. */
  test('knows how old a number is after a sleep of three seconds that nobody told of', async () => {
    const faults = [fault('line-hangs-up', 79, 122), fault('computer-sleeps-untold', 82, 85)];
    expect((await runWorld({ seed: 2026113067, lengthS: 130, faults })).violation).toBeNull();
  });

  /** Found by seed 2026120004. */
  test('loses nothing that was said to be saved when the power fails after the program was killed', async () => {
    const faults = [fault('program-killed', 60, 300), fault('power-cut', 200, 230)];
    for (const seed of [1, 2, 3]) {
      expect((await runWorld({ seed, lengthS: 340, faults })).violation).toBeNull();
    }
  });

  /** Found by seed 2026140494: while the probe has nothing to tell, no later input shows a window what it missed. */
  test('gives a window that lost its socket what was heard meanwhile, though the probe is silent when it is back', async () => {
    const faults = [fault('socket-breaks', 60, 116), fault('line-floods', 66, 180)];
    expect((await runWorld({ seed: 2026140494, lengthS: 180, faults })).violation).toBeNull();
  });

  /** Found by seed 2026160061: a reading was heard after a mark made later than it, which alone came to the disk. */
  test('says of no time that it is saved of which a reading heard late is not', async () => {
    const faults = [
      fault('prompts-are-answered', 26, 106),
      fault('program-killed', 69, 74),
      fault('disk-is-read-only', 84, 260),
      fault('power-cut', 241, 242),
    ];
    const setup = { seed: 2026160061, lengthS: 300, faults };
    expect((await runWorld(setup)).violation).toBeNull();
  });

  /** Found by seeds 2026220015 and 2026220033: what a failed sync threw away is still read, and on no platter. */
  test('loses nothing that was said to be saved when a program whose syncs failed was killed and another went on', async () => {
    const faults = [
      fault('syncs-fail', 60, 100),
      fault('program-killed', 80, 90),
      fault('power-cut', 180, 185),
    ];
    for (const seed of [1, 2, 3, 4]) {
      expect((await runWorld({ seed, lengthS: 290, faults })).violation).toBeNull();
    }
  });

  /** The one that the disk had not let be left was taken up again, and the one that was kept since was forgotten. */
  test('keeps after a full disk and an end of the program the ferment warm that was kept last', async () => {
    const faults = [
      fault('ferments-are-written-down', 10, 160),
      fault('disk-is-full', 40, 62),
      fault('disk-is-full', 90, 112),
      fault('program-killed', 165, 170),
    ];
    const setup = { seed: 19, lengthS: 265, faults, end: 'clean' as const };
    expect((await runWorld(setup)).violation).toBeNull();
  });

  /** What was not found while the folder was away was taken for none, and the file that was back was written anew without it. */
  test('keeps the set-ups there are when one is given while the folder comes back', async () => {
    const faults = [
      fault('tables-are-taken-in', 10, 200),
      fault('set-ups-are-kept', 10, 200),
      fault('everything-is-looked-at', 10, 200),
      fault('folder-vanishes', 120, 127),
      fault('folder-vanishes', 140, 142),
      fault('folder-vanishes', 160, 165),
    ];
    expect((await runWorld({ seed: 121, lengthS: 300, faults })).violation).toBeNull();
  });

  /** Found by seed 2026350052: nobody looks for a file that nothing is written to, and the next one was begun without those before it. */
  test('writes a run again that was deleted while the disk was read-only', async () => {
    const faults = [fault('disk-is-read-only', 60, 120), fault('run-is-tidied-away', 85, 87)];
    expect((await runWorld({ seed: 7, lengthS: 240, faults })).violation).toBeNull();
  });

  /** Its lock could not be had, and was never asked for again. */
  test('has the folder again that was away when the program was started', async () => {
    const faults = [fault('folder-vanishes', 60, 100), fault('program-killed', 70, 80)];
    expect((await runWorld({ seed: 6, lengthS: 200, faults })).violation).toBeNull();
  });

  /** Found by seed 2026260114: the person took the first refusal for the end of it. */
  test('hears both probes again that somebody connected while one of them was not plugged in', async () => {
    const faults = [fault('second-line-hangs-up', 26, 45), fault('probe-is-let-go', 28, 33)];
    expect((await runWorld({ seed: 2026260114, lengthS: 120, faults })).violation).toBeNull();
  });

  /** The window took a refusal for all there is, and with a silent probe nothing made it read again. */
  test('gives a window what it could not read when the desk was killed, though the probe is silent', async () => {
    const faults = [
      fault('syncs-fail', 109, 126),
      fault('socket-breaks', 204, 218),
      fault('desk-is-killed', 208, 231),
      fault('line-hangs-up', 215, 230),
    ];
    const setup = { seed: 2026261117, lengthS: 330, faults };
    expect((await runWorld(setup)).violation).toBeNull();
  });

  /** The simulated still stayed connected, or the window let go of it and of the probe with it. */
  test.each(['disk-is-full', 'disk-is-read-only', 'folder-is-taken'] as const)(
    'gives the probe back after a rehearsal that could not begin since %s',
    async (kind) => {
      const faults = [fault('rehearsal-is-held', 40, 80), fault(kind, 35, 60)];
      expect((await runWorld({ seed: 6, lengthS: 200, faults })).violation).toBeNull();
    },
  );

  /** Heat-off is due from 528 s on; the windows are opened, and one has its socket again, while nothing can be read. */
  const openedWithoutFolder = {
    seed: 2,
    lengthS: 660,
    faults: [
      fault('folder-vanishes', 480, 600),
      fault('windows-vanish', 550, 555),
      fault('socket-breaks', 550, 555),
    ],
    end: 'clean',
  } as const;
  test('shows a heat-off that is due in windows that are opened while the folder of the runs is away', async () => {
    const { violation, heatOffS } = await runWorld(openedWithoutFolder);
    expect([violation, heatOffS]).toEqual([null, expect.closeTo(524, 0)]);
  });

  /** Everything that a planted defect needs to show. */
  const eventful = {
    seed: 2,
    lengthS: 420,
    faults: [
      fault('viewer-gives-orders', 20, 21),
      fault('second-program', 24, 25),
      fault('person-writes-a-note', 28, 29),
      fault('probe-is-mute', 40, 80),
      fault('program-killed', 330, 335),
    ],
  };

  /** What a planted defect of the second desk needs to show. */
  const atSecondDesk = [
    fault('set-ups-are-kept', 90, 110),
    fault('runs-are-put-in-order', 110, 220),
    fault('tables-are-given-out', 220, 240),
  ];
  const ofSecondDesk: ReadonlySet<string> = new Set([
    'kept-stays-kept',
    'table-has-every-reading',
    'pack-is-whole',
    'no-request-fails-inside',
  ]);

  test.each(['clean', 'power-cut'] as const)(
    'keeps every promise where defects are planted below, before they are (%s end)',
    async (end) => {
      const faults = [
        ...eventful.faults,
        ...atSecondDesk,
        ...rehearsed,
        ...vanished,
        ...tidiedAway,
        ...held.map(({ kind, fromS, toS }) => fault(kind, fromS + 45, toS + 45)),
        ...[41, 44, 47].map((fromS) => fault('desk-is-killed', fromS, fromS + 3)),
      ];
      const outcome = await runWorld({ ...eventful, faults, end });
      expect([outcome.violation, outcome.heatOffS === null]).toEqual([null, false]);
    },
  );

  /** What a planted defect of a rehearsal needs to show. */
  const rehearsed = [fault('rehearsal-is-held', 40, 80)];
  const ofRehearsal: ReadonlySet<string> = new Set([
    'rehearsal-gives-the-probe-back',
    'receiver-holds-what-came-over',
  ]);
  const vanished = [fault('folder-vanishes', 60, 100)];

  const tidiedAway = [fault('run-is-tidied-away', 60, 61), fault('run-is-tidied-away', 200, 201)];

  /** A run is stopped, and begun anew, while its folder is away. */
  const endedWithoutFolder = [...vanished, fault('person-stops-the-run', 80, 81)];

  /** All of the disk is held for two minutes, and somebody does something meanwhile. */
  const held = [
    fault('disk-is-held', 60, 180),
    fault('heat-by-hand', 80, 110),
    fault('window-reloads', 100, 104),
  ];

  /** What one planted defect needs to show, and no other. */
  const ofOne: { readonly [planted in PlantedFault]?: Partial<WorldSetup> } = {
    'window-reads-the-disk': openedWithoutFolder,
    'ended-run-kept-quiet': { faults: endedWithoutFolder },
    'write-is-waited-for': { faults: held },
    'held-disk-kept-quiet': { faults: held },
    'held-disk-told-for-ever': { faults: held },
    'act-looks-at-the-disk': { faults: held },
    'space-is-asked-again': { faults: held },
    'deletion-goes-unseen': { faults: tidiedAway },
    'desk-stays-dead': { faults: [fault('desk-is-killed', 40, 43)] },
    'minutes-not-written': {
      seed: 19,
      lengthS: 520,
      faults: [fault('ferments-are-written-down', 10, 147), fault('program-killed', 400, 410)],
    },
  };

  test('has a run whole that was stopped while its folder was away, before defects are planted below', async () => {
    const outcome = await runWorld({ ...eventful, faults: endedWithoutFolder, end: 'clean' });
    expect([outcome.violation, outcome.runs]).toEqual([null, 2]);
  });

  test('has every minute in which a ferment was heard, before defects are planted below', async () => {
    const outcome = await runWorld({ ...eventful, ...ofOne['minutes-not-written'], end: 'clean' });
    expect(outcome.violation).toBeNull();
  });

  const endsWithoutPower = new Set(['saved-survives-a-power-cut', 'kept-stays-kept']);

  test.each(Object.entries(plantedFaults))(
    'finds the planted defect %s as a breach of %s',
    async (name, invariant) => {
      const planted = name as PlantedFault;
      const end = endsWithoutPower.has(invariant) ? 'power-cut' : 'clean';
      const others =
        invariant === 'program-comes-back' ? eventful.faults : eventful.faults.slice(0, -1);
      const without = invariant === 'lost-folder-is-told' ? vanished : others;
      const alone = ofRehearsal.has(invariant) ? rehearsed : without;
      const usual = ofSecondDesk.has(invariant) ? atSecondDesk : alone;
      const own = ofOne[planted] ?? { faults: usual };
      const outcome = await runWorld({ ...eventful, end, ...own, planted });
      expect(outcome.violation?.invariant).toBe(invariant);
    },
  );
});

describe('shrinkFaults', () => {
  test('leaves exactly the faults that a failure needs', async () => {
    const faults = Array.from({ length: 9 }, (_, index) =>
      fault('probe-is-mute', index, index + 1),
    );
    const needs = [2, 7];
    const kept = await shrinkFaults(faults, async (fewer) =>
      needs.every((fromS) => fewer.some((it) => it.fromS === fromS)),
    );
    expect(kept.map(({ fromS }) => fromS)).toEqual(needs);
  });
});
