import {
  defaultRunSettings,
  type ProbeSource,
  type RunSettings,
  type SerialSource,
  serialSourceSchema,
} from '#shared-core';
import type { Random } from '../../shared-core/random/create-random.ts';
import { createPowerLossDisk, type PowerLossDisk } from '../main/support/power-loss-disk.ts';
import { createDiskHold, type DiskHold } from './disk-hold.ts';
import { drawStill, type Place, type SimulatedStill } from './draw-still.ts';
import type { Fault, FaultKind } from './fault.ts';
import { createSimulatedLine, type SimulatedLine } from './simulated-line.ts';
import { createVanishingFolder } from './vanishing-folder.ts';
import { createWorldTime, type WorldTime } from './world-time.ts';

/** All that a program finds: computer, disk, lines, and the still that the probes hang in. */
export interface Bench {
  readonly time: WorldTime;
  readonly isOn: (kind: FaultKind) => boolean;
  readonly disk: PowerLossDisk;
  readonly hold: DiskHold;
  readonly lines: readonly SimulatedLine[];
  readonly still: SimulatedStill;
  readonly source: ProbeSource;
  readonly settings: RunSettings;
  /** The folder is gone, or is about to be back. */
  isAway(): boolean;
  /** What the probes are to be pulled out by, planted or not. */
  pullOut(): void;
}

export const stepS = 0.5;
/** Ports of the simulated computer: names of files that are there, so that none counts as pulled. */
const paths = [
  ['/dev/null', '/dev/zero'],
  ['/dev/random', '/dev/urandom'],
] as const;
/** What hangs where; a second probe that also calls itself head keeps a name of its own. */
const places: readonly (readonly (readonly Place[])[])[] = [
  [['head']],
  [['head', 'pot']],
  [['head'], ['pot', 'room']],
  [['head'], ['head']],
];

export function createBench(random: Random, faults: readonly Fault[], lengthS: number): Bench {
  const time = createWorldTime();
  const isOn = (kind: FaultKind) =>
    faults.some(
      (fault) => fault.kind === kind && fault.fromS <= time.nowS() && time.nowS() < fault.toS,
    );
  const luck = random.fork('disk');
  const folder = createVanishingFolder(() => isOn('folder-vanishes'), luck.fork('folder'));
  const hold = createDiskHold({ faults, isOn, nowS: time.nowS });
  const isEverHeld = faults.some(({ kind }) => kind === 'disk-is-held');
  const disk = createPowerLossDisk(
    {
      failSync: () => isOn('syncs-fail') && luck.uniform() < 0.5,
      takeBytes(length) {
        if (isOn('disk-is-full') || isOn('disk-is-read-only')) return null;
        return isOn('disk-writes-half') ? Math.floor(length * luck.uniform()) : length;
      },
      isAway: folder.isAwayNow,
      ...(isEverHeld && { held: hold.held }),
      syncTakesS: () => (isOn('disk-is-slow') ? luck.uniform() * 3 : 0),
      refuse() {
        if (isOn('disk-is-read-only')) return 'read-only';
        return isOn('scanner-holds-files') && luck.uniform() < 0.5 ? 'read-only' : null;
      },
    },
    time.bench,
  );
  const still = drawStill(random.fork('still'), lengthS);
  const drawn = places[random.fork('probes').integer(0, places.length - 1)] ?? [['head']];
  // A ferment is kept warm by a probe of its own, where there is a port left.
  const isFermentWatched = faults.some(({ kind }) => kind === 'ferments-are-written-down');
  const ofFerment: readonly Place[] = ['ferment'];
  const hanging = isFermentWatched && drawn.length === 1 ? [...drawn, ofFerment] : drawn;
  const lines = hanging.map((ofProbe, index) =>
    createSimulatedLine({
      time,
      random: random.fork(`line ${index}`),
      paths: paths[index] ?? paths[0],
      serialNumber: `still-${index + 1}`,
      places: ofProbe,
      temperatureC: still.temperatureC,
    }),
  );
  let isPulledOut = false;

  function moveMoods(): void {
    const [first, second] = lines;
    Object.assign(first?.mood ?? {}, {
      noise: isOn('noise-on-the-line'),
      plugged: !isOn('line-hangs-up') && !isPulledOut,
      moved: isOn('probe-at-another-port'),
      opensAfterS: isOn('line-is-slow-to-open') ? 4 : 0,
      flood: isOn('line-floods'),
      stutters: isOn('line-stutters'),
      mute: isOn('probe-is-mute'),
    });
    Object.assign(second?.mood ?? {}, {
      noise: isOn('second-line-is-noisy'),
      plugged: !isOn('second-line-hangs-up'),
    });
  }

  time.bench.every(stepS, () => {
    still.step(stepS);
    moveMoods();
    hold.step();
  });
  return {
    time,
    isOn,
    disk,
    hold,
    lines,
    isAway: folder.isAway,
    still,
    source: sourceOf(lines),
    settings: defaultRunSettings,
    pullOut() {
      isPulledOut = true;
    },
  };
}

function sourceOf(lines: readonly SimulatedLine[]): ProbeSource {
  const probes: SerialSource[] = lines.map(({ firstPath }) =>
    serialSourceSchema.parse({ kind: 'serial', path: firstPath, language: 'plain-text' }),
  );
  const [only] = probes;
  return only !== undefined && probes.length === 1
    ? only
    : { kind: 'several', probes, timeScale: 1 };
}
