import type { Random } from '../../shared-core/random/index.ts';

/** How a person heats: a flame that is taken away and put back, a mantle that is eased, or steady heat. */
export type Habit = 'steady' | 'flame' | 'mantle';

export interface PersonSetup {
  readonly habit: Habit;
  /** Heat that brings the charge to the boil, and heat for distilling [W]. */
  readonly fullW: number;
  readonly workingW: number;
  /** Seconds until a vigorous boil is seen and the hand is there. */
  readonly reactionS: number;
  /** Rise of the reading in 10 s that looks too fast [K]; null for who doesn't look. */
  readonly tooFastK: number | null;
  /** Reading above which the person doesn't like to be [°C]; null for who has no such notion. */
  readonly tooHotC: number | null;
  /** Shortest and longest time the flame is away [s]. */
  readonly awayS: readonly [number, number];
  readonly mostCycles: number;
  /** Bathed seconds of weak vapour after which the heat comes off for good. */
  readonly weakForS: number;
}

/** What the person sees. */
export interface Sight {
  readonly timeS: number;
  readonly reading: number;
  readonly readingBefore: number;
  readonly froth: number;
  readonly arrived: boolean;
  /** Distillate that runs, as a share of the usual. */
  readonly flow: number;
}

export interface HeatAct {
  readonly timeS: number;
  readonly kind: 'heat-off' | 'heat-on' | 'heat-eased';
}

export interface Person {
  readonly setup: PersonSetup;
  readonly random: Random;
  readonly acts: HeatAct[];
  /** Heat the hand has set [W]; 0 while the flame is away. */
  wantedW: number;
  levelW: number;
  backAtS: number | null;
  alarmedAtS: number | null;
  actedAtS: number;
  cycles: number;
  hotInARow: number;
  dislikesAboveC: number | null;
  easedOnArrival: boolean;
  /** Since when hardly anything has come over though the heat is on. */
  slowSinceS: number | null;
}

/** So little, for so long, and a person turns up the heat. */
const slowFlow = 0.5;
const slowForS = 150;
/** Least time between two acts [s]. */
const restS = 8;
/** After being chased off by the same temperature so often, the person accepts more. */
const givesInAfter = 5;

export function newPerson(setup: PersonSetup, random: Random): Person {
  return {
    setup,
    random,
    acts: [{ timeS: 0, kind: 'heat-on' }],
    wantedW: setup.fullW,
    levelW: setup.fullW,
    backAtS: null,
    alarmedAtS: null,
    actedAtS: 0,
    cycles: 0,
    hotInARow: 0,
    dislikesAboveC: setup.tooHotC,
    easedOnArrival: false,
    slowSinceS: null,
  };
}

/** One second of watching. */
export function watch(person: Person, sight: Sight): void {
  const { setup } = person;
  if (person.backAtS !== null) {
    putBack(person, sight);
    return;
  }
  if (setup.habit !== 'flame' && sight.arrived && !person.easedOnArrival) {
    person.easedOnArrival = true;
    setLevel(person, sight.timeS, setup.workingW);
    return;
  }
  if (sight.arrived || person.levelW < setup.fullW) turnUpIfSlow(person, sight);
  if (setup.habit === 'steady') return;
  const reason = alarm(person, sight);
  if (reason === null) {
    person.alarmedAtS = null;
    return;
  }
  person.alarmedAtS ??= sight.timeS;
  const free = sight.timeS >= person.actedAtS + restS;
  if (!free || sight.timeS < person.alarmedAtS + setup.reactionS) return;
  act(person, sight, reason);
}

function alarm(
  { setup, dislikesAboveC, easedOnArrival }: Person,
  { froth, reading, readingBefore, arrived }: Sight,
): 'froth' | 'fast' | 'hot' | null {
  if (froth > 1) return 'froth';
  const warm = reading > 40;
  if (warm && setup.tooFastK !== null && reading - readingBefore > setup.tooFastK) {
    return easedOnArrival && !arrived ? null : 'fast';
  }
  return dislikesAboveC !== null && reading > dislikesAboveC ? 'hot' : null;
}

function act(person: Person, { timeS }: Sight, reason: 'froth' | 'fast' | 'hot'): void {
  const { setup, random } = person;
  person.alarmedAtS = null;
  if (person.cycles >= setup.mostCycles) {
    setLevel(person, timeS, Math.max(0.9 * setup.workingW, 0.85 * person.levelW));
    return;
  }
  if (setup.habit === 'mantle' && random.uniform() < 0.7) {
    setLevel(
      person,
      timeS,
      Math.max(0.7 * setup.workingW, person.levelW * (0.65 + 0.25 * random.uniform())),
    );
    return;
  }
  person.hotInARow = reason === 'hot' ? person.hotInARow + 1 : 0;
  if (person.hotInARow >= givesInAfter && person.dislikesAboveC !== null) {
    person.dislikesAboveC += 2 + 2 * random.uniform();
    person.hotInARow = 0;
  }
  person.cycles += 1;
  person.wantedW = 0;
  person.actedAtS = timeS;
  const [shortest, longest] = setup.awayS;
  person.backAtS = timeS + shortest * (longest / shortest) ** random.uniform();
  person.acts.push({ timeS, kind: 'heat-off' });
}

/** Mostly a little less heat than before, sometimes more. */
function putBack(person: Person, { timeS, froth }: Sight): void {
  const { setup, random } = person;
  if (person.backAtS === null || timeS < person.backAtS || froth > 0.6) return;
  person.backAtS = null;
  person.actedAtS = timeS;
  const changed = person.levelW * (0.82 + 0.38 * random.uniform());
  person.levelW = Math.min(setup.fullW, Math.max(0.8 * setup.workingW, changed));
  person.wantedW = person.levelW;
  person.acts.push({ timeS, kind: 'heat-on' });
}

/** Who sees hardly a drop for some minutes gives more heat. */
function turnUpIfSlow(person: Person, { timeS, flow }: Sight): void {
  if (flow > slowFlow) {
    person.slowSinceS = null;
    return;
  }
  person.slowSinceS ??= timeS;
  if (timeS < person.slowSinceS + slowForS) return;
  person.slowSinceS = null;
  const most = Math.max(person.setup.fullW, 1.6 * person.setup.workingW);
  setLevel(person, timeS, Math.min(most, person.levelW * (1.1 + 0.2 * person.random.uniform())));
}

function setLevel(person: Person, timeS: number, levelW: number): void {
  if (levelW < person.levelW) person.acts.push({ timeS, kind: 'heat-eased' });
  person.levelW = levelW;
  person.wantedW = levelW;
  person.actedAtS = timeS;
}

/** Takes the heat off for good. */
export function stopHeating(person: Person, timeS: number): void {
  person.wantedW = 0;
  person.acts.push({ timeS, kind: 'heat-off' });
}
