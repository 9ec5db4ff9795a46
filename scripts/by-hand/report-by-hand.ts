import type { MarkBody, RunInput } from '#shared-core';
import type { Random } from '../../shared-core/random/index.ts';
import type { ByHandDraw, HeadProbe, SideChannel } from './draw-by-hand.ts';
import type { StillCourse } from './hand-heated-still.ts';
import { bulbTemperature, follow } from './hung-bulb.ts';

/** A channel's readings; those at the places in `bad` are faults that the probe told as such. */
export interface ChannelReadings {
  readonly unit: '°C' | 'g' | 'kPa';
  readonly timeS: readonly number[];
  readonly values: readonly number[];
  readonly bad: readonly number[];
}

/** Everything that was reported of a run. */
export interface ByHandReport {
  readonly head: ChannelReadings;
  /** What every other channel would have said, whether it was there or not. */
  readonly side: Readonly<Record<SideChannel, ChannelReadings>>;
  /** Marks and changes of the probe's line. */
  readonly others: readonly RunInput[];
}

const wanderS = 120;
const noHandS = [0, 6] as const;
const sideEveryS = 5;
/** A faulty thermocouple amplifier says this, or nothing much. */
const faultC = 2047.75;

export function reportByHand(draw: ByHandDraw, course: StillCourse): ByHandReport {
  const { head, links } = headReadings(draw, course);
  const marks = marksOf(draw, course, draw.random.fork('marks'));
  return {
    head,
    side: sideReadings(draw, course, draw.random.fork('side')),
    others: [...links, ...marks].toSorted((a, b) => a.timeS - b.timeS),
  };
}

function headReadings(
  { probe, probeChange, still, random: from }: ByHandDraw,
  course: StillCourse,
): { head: ChannelReadings; links: RunInput[] } {
  const random = from.fork('head');
  const noise = createNoise(probe, random.fork('noise'));
  const endS = course.bulbC.length - 1;
  const changeS =
    probeChange === null ? endS + 1 : Math.round(probeChange.atShare * course.heatOffS);
  const backS = changeS + Math.round(probeChange?.gapS ?? 0);
  const bursts = burstSeconds(probe, endS, random.fork('bursts'));
  const second = { fastC: still.roomC, slowC: still.roomC };
  const timesS: number[] = [];
  const values: number[] = [];
  const bad: number[] = [];
  for (let timeS = 0; timeS <= endS; timeS += 1) {
    let bulbC = course.bulbC[timeS] as number;
    if (probeChange !== null && timeS >= changeS) {
      const felt = course.feltC[timeS] as number;
      follow(second, probeChange.lag, felt, course.slowness[timeS] as number, 1);
      bulbC = bulbTemperature(probeChange.lag, second);
    }
    const error = noise();
    if (timeS % probe.everyS !== 0 || (timeS >= changeS && timeS < backS)) continue;
    const offsetK = timeS >= backS ? (probeChange?.offsetK ?? 0) : probe.offsetK;
    const burst = bursts.get(timeS);
    if (burst === 'told') bad.push(values.length);
    timesS.push(timeS);
    values.push(
      burst === 'told'
        ? faultC
        : burst === 'zero'
          ? 0
          : quantised(bulbC + offsetK + error, probe.quantumK),
    );
  }
  const links: RunInput[] =
    probeChange === null || backS > endS
      ? []
      : [
          { kind: 'link', timeS: changeS + 2, state: 'lost', reason: 'unplugged' },
          {
            kind: 'link',
            timeS: backS,
            state: 'back',
            reason: probeChange.recognised ? 'probe-changed' : 'unplugged',
          },
        ];
  return { head: { unit: '°C', timeS: timesS, values, bad }, links };
}

/** Noise with a short memory and a slow wander, second by second. */
function createNoise(
  { noiseK, slowShare, slowS, wanderK }: HeadProbe,
  random: Random,
): () => number {
  const keeps = Math.exp(-1 / slowS);
  const wanderKeeps = Math.exp(-1 / wanderS);
  let slow = random.normal();
  let wander = random.normal();
  return () => {
    slow = keeps * slow + Math.sqrt(1 - keeps ** 2) * random.normal();
    wander = wanderKeeps * wander + Math.sqrt(1 - wanderKeeps ** 2) * random.normal();
    const short = Math.sqrt(slowShare) * slow + Math.sqrt(1 - slowShare) * random.normal();
    return noiseK * short + wanderK * wander;
  };
}

function burstSeconds(
  { burstsPerH }: HeadProbe,
  endS: number,
  random: Random,
): ReadonlyMap<number, 'told' | 'zero'> {
  const seconds = new Map<number, 'told' | 'zero'>();
  if (burstsPerH <= 0) return seconds;
  for (let timeS = 0; timeS < endS; ) {
    timeS += Math.ceil((3600 / burstsPerH) * random.exponential());
    const kind = random.uniform() < 0.6 ? 'told' : 'zero';
    const lastsS = random.integer(1, 6);
    for (let second = 0; second < lastsS; second += 1) seconds.set(timeS + second, kind);
    timeS += lastsS;
  }
  return seconds;
}

/** What a person with both hands full writes down. */
function marksOf(draw: ByHandDraw, course: StillCourse, random: Random): RunInput[] {
  const { heatOffS, acts, distilledMl, bathed } = course;
  const made: { timeS: number; body: MarkBody }[] = [];
  const late = (): number => noHandS[0] + (noHandS[1] - noHandS[0]) * random.uniform();
  for (const { timeS, kind } of acts) {
    const isStop = timeS >= heatOffS;
    const wanted = isStop || draw.marksOnly === null || draw.marksOnly === kind;
    const share = isStop ? Number(draw.marksStop) : timeS === 0 ? 0.4 : draw.marksShare;
    if (wanted && random.uniform() < share)
      made.push({ timeS: timeS + late(), body: { type: kind } });
  }
  const arrivalS = bathed.findIndex((share) => share > 0.9);
  for (let read = 0; read < draw.volumesRead && arrivalS >= 0; read += 1) {
    const timeS = Math.round(arrivalS + (heatOffS - arrivalS) * random.uniform());
    const volumeMl = Math.round(2 * (distilledMl[timeS] as number)) / 2;
    if (volumeMl > 0) made.push({ timeS: timeS + 0.5, body: { type: 'volume-read', volumeMl } });
  }
  return made
    .toSorted((a, b) => a.timeS - b.timeS)
    .map(({ timeS, body }, index) => ({ kind: 'mark', timeS, markId: index + 1, mark: body }));
}

function sideReadings(
  { still }: ByHandDraw,
  course: StillCourse,
  random: Random,
): Record<SideChannel, ChannelReadings> {
  const potOffsetK = 0.4 * random.normal();
  const waterC = 10 + 8 * random.uniform();
  const at = (values: readonly number[], timeS: number): number =>
    values[Math.max(0, timeS)] as number;
  const channel = (
    unit: ChannelReadings['unit'],
    quantum: number,
    valueAt: (timeS: number) => number,
  ): ChannelReadings => {
    const timeS: number[] = [];
    const values: number[] = [];
    for (let at = 0; at < course.bulbC.length; at += sideEveryS) {
      timeS.push(at);
      values.push(quantised(valueAt(at), quantum));
    }
    return { unit, timeS, values, bad: [] };
  };
  return {
    pot: channel(
      '°C',
      0.0625,
      (timeS) => at(course.potC, timeS - 8) + potOffsetK + 0.05 * random.normal(),
    ),
    'condenser-outlet': channel(
      '°C',
      0.0625,
      (timeS) => waterC + 4 * Math.min(3, at(course.flow, timeS - 20)) + 0.1 * random.normal(),
    ),
    room: channel('°C', 0.1, (timeS) => still.roomC + timeS / 7200 + 0.05 * random.normal()),
    receiver: channel('g', 0.1, (timeS) => 0.83 * at(course.distilledMl, timeS - 30)),
    'air-pressure': channel(
      'kPa',
      0.01,
      (timeS) =>
        still.pressureKPa +
        (still.pressureDriftKPaPerH * timeS) / 3600 +
        0.03 +
        0.02 * random.normal(),
    ),
  };
}

function quantised(value: number, quantum: number): number {
  return Math.round(1e4 * quantum * Math.round(value / quantum)) / 1e4;
}
