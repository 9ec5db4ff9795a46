import {
  createBatchSimulation,
  createProbeSignal,
  createRandom,
  type MarkBody,
  pearFermentSetup,
  teachingRigs,
} from '#shared-core';

/** What a person does to the heat, as marked in a run. */
export type HeatMark = Extract<MarkBody['type'], 'heat-on' | 'heat-eased' | 'heat-off'>;

export interface VirtualStillOptions {
  readonly rig: keyof typeof teachingRigs;
  readonly seed: number;
  /** Heat on from the start; otherwise the still waits, cold, for a heat mark. */
  readonly heated: boolean;
}

/** What the two probes in still head and pot show at one moment; null when nothing arrives from one. */
export interface VirtualReadings {
  readonly headC: number | null;
  readonly potC: number | null;
}

/** A simulated still with two digital probes in it. */
export interface VirtualStill {
  /** Advances to this moment of the still's own time and reads both probes. */
  readAt(timeS: number): VirtualReadings;
  heat(mark: HeatMark): void;
  /** All that has come over so far [mL]. */
  distilledMl(): number;
}

/** The rigs by the names people type. */
export const virtualRigs = {
  'simple-head': 'simpleHead',
  vigreux: 'vigreux',
  'glass-bead-column': 'glassBeads',
  'wire-packing': 'wirePacking',
} as const satisfies Readonly<Record<string, keyof typeof teachingRigs>>;

export type VirtualRigName = keyof typeof virtualRigs;

export function isVirtualRigName(name: string): name is VirtualRigName {
  return Object.hasOwn(virtualRigs, name);
}

/**
 * As much heat as a careful person leaves on once vapour has come over, and how long it takes them from the first drops
 * that follow each other; common practice, no source.
 */
const easedHeatShare = 0.48;
const easeAfterS = 30;

/** Drops fewer than these make the same person turn the heat up again, if it is still on: so a forgotten pot boils dry [mL/min]. */
const leastDripMlPerMin = 0.25;

/** What the person waits for who minds the heat; nothing once it is turned up for good, or while whoever marks eases it or takes it away. */
type WaitsFor = 'drops' | 'few-drops' | 'nothing';

/** The end of a digital one-wire sensor's scale [°C]: beyond it, as in a pot that is dry, nothing can be told. No vapour is so hot. */
const sensorEndC = 125;

/**
 * Digital one-wire sensors: 1/16 °C steps, 85 °C once after power-on; dropouts as felt at a bench. Noise, wander and the slower part of the
 * bulb (t90/t63 of 3.4) as measured by others on open series.
 */
const flaws = {
  whiteNoiseK: 0.03,
  slowNoiseK: 0.02,
  wanderK: 0.02,
  slowShare: 0.27,
  slowShareS: 30,
  quantumK: 1 / 16,
  dropoutsPerHour: 2,
  dropoutS: 4,
  powerOnReadings: 1,
} as const;

export function createVirtualStill(options: VirtualStillOptions): VirtualStill {
  const setup = pearFermentSetup();
  const rig = teachingRigs[options.rig];
  const still = createBatchSimulation({ ...setup, rig, schedule: [] });
  const random = createRandom(options.seed);
  const head = createProbeSignal({ ...flaws, random: random.fork('head') });
  const pot = createProbeSignal({ ...flaws, t90S: 12, random: random.fork('pot') });
  let waitsFor: WaitsFor = 'nothing';
  let dripsSinceS: number | null = null;

  function turn(mark: HeatMark): void {
    if (mark === 'heat-eased') {
      still.applyEvent({ kind: mark, powerW: easedHeatShare * rig.heater.powerW });
    } else {
      still.applyEvent({ kind: mark });
    }
  }

  function heat(mark: HeatMark): void {
    turn(mark);
    waitsFor = mark === 'heat-on' ? 'drops' : 'nothing';
    dripsSinceS = null;
  }

  function mindDropsAt(timeS: number): void {
    still.advance(timeS);
    const drips = still.state.distillateRateMlPerMin > leastDripMlPerMin;
    dripsSinceS = drips ? (dripsSinceS ?? timeS) : null;
    if (waitsFor === 'drops' && dripsSinceS !== null && timeS - dripsSinceS >= easeAfterS) {
      turn('heat-eased');
      waitsFor = 'few-drops';
    } else if (waitsFor === 'few-drops' && !drips) {
      turn('heat-on');
      waitsFor = 'nothing';
    }
  }

  if (options.heated) heat('heat-on');
  return {
    heat,
    distilledMl: () => still.state.distillateVolumeMl,
    readAt(timeS) {
      // Every second, however seldom the probes are read.
      for (let atS = Math.floor(still.state.timeS) + 1; atS < timeS; atS += 1) mindDropsAt(atS);
      mindDropsAt(timeS);
      const { bulbTemperatureC, potTemperatureC } = still.state;
      return {
        headC: head.read(timeS, bulbTemperatureC),
        potC: potTemperatureC > sensorEndC ? null : pot.read(timeS, potTemperatureC),
      };
    },
  };
}
