import { createRandom, defaultRunSettings, type RunSettings } from '#shared-core';
import { createHeadTracker } from '../../shared-core/monitor/sense/index.ts';
import { createHeadCourse, createLimitScale } from '../../shared-core/monitor/situation/index.ts';
import type { Random } from '../../shared-core/random/index.ts';
import { createBestDetector, type PlateauNoise } from './best-detector.ts';

const plateauC = 78.4;
const standardAir = { pressureKPa: 101.325, standardUncertaintyKPa: 0.1 } as const;
const settleS = 1200;
const longestRampS = 1800;
/** As long as the plateau of a lesson. */
const plateauHours = 1;
/** Two alarms closer together than this are one. */
const oneAlarmS = 600;

function noiseSource(noise: PlateauNoise, random: Random): () => number {
  const slow = fading(noise.slowSdK, noise.slowS, random);
  const wander = fading(noise.wanderSdK, noise.wanderS, random);
  return () => slow() + wander() + noise.whiteSdK * random.normal();
}

/** Noise that forgets with a time constant. */
function fading(sdK: number, forgetsInS: number, random: Random): () => number {
  const kept = Math.exp(-1 / forgetsInS);
  let value = random.normal();
  return () => {
    value = kept * value + Math.sqrt(1 - kept * kept) * random.normal();
    return sdK * value;
  };
}

/** Heating up to vapour at the bulb comes first: a head that begins in the middle of a plateau is not seen to arrive [s], [°C]. */
const warmUpS = 420;
const vapourComesS = 360;
const roomC = 21;
const bulbTimeConstantS = 8;

function warmingUpC(timeS: number): number {
  const followed =
    timeS < vapourComesS ? 0 : -Math.expm1((vapourComesS - timeS) / bulbTimeConstantS);
  return roomC + followed * (plateauC - roomC);
}

const createOwn = (): ((timeS: number, aboveK: number) => boolean) => {
  const detector = createMonitorDetector();
  return (timeS, aboveK) => detector(timeS, plateauC + aboveK);
};

/** The monitor's own chain from reading to `plateau-ending`; it learns level and noise by itself. */
function createMonitorDetector(): (timeS: number, readingC: number) => boolean {
  const settings: RunSettings = {
    ...defaultRunSettings,
    pressure: { ...standardAir, source: 'barometer', altitudeM: null },
    probe: { ...defaultRunSettings.probe, lagT90S: 0 },
  };
  const course = createHeadCourse(
    settings,
    createHeadTracker(settings),
    createLimitScale(settings),
  );
  const isEnding = (timeS: number, value: number): boolean =>
    course.second(
      timeS,
      { timeS, value, count: 1, spread: 0 },
      { potC: null, isQuiet: true, isHeatOff: false },
    ).situation.departedS !== null;
  for (let timeS = 0; timeS <= warmUpS; timeS += 1) isEnding(timeS, warmingUpC(timeS));
  return (timeS, readingC) => isEnding(warmUpS + timeS, readingC);
}

/** What a detector says of plateaux that nothing happens on, second by second: each is a run of its own, since it learns as it goes. */
function onFlat<Said>(
  create: () => (timeS: number, aboveK: number) => Said,
  noise: PlateauNoise,
  hours: number,
): readonly Said[] {
  return Array.from({ length: hours / plateauHours }, (_, plateau) => {
    const says = create();
    const next = noiseSource(noise, createRandom(`flat ${plateau}`));
    return Array.from({ length: settleS + 3600 * plateauHours }, (_, second) =>
      says(second + 1, next()),
    ).slice(settleS);
  }).flat();
}

function alarmsPerHour(fired: readonly boolean[]): number {
  let alarms = 0;
  let lastS = Number.NEGATIVE_INFINITY;
  for (const [timeS, isOn] of fired.entries()) {
    if (!isOn) continue;
    if (timeS - lastS > oneAlarmS) alarms += 1;
    lastS = timeS;
  }
  return (3600 * alarms) / fired.length;
}

/** Threshold at which the best detector gives as few false alarms; by bisection on one series. */
function matchThreshold(noise: PlateauNoise, perHour: number, hours: number): number {
  const said = onFlat(
    () => {
      const detector = createBestDetector(noise);
      return (_, aboveK) => detector(aboveK);
    },
    noise,
    hours,
  );
  let low = 1;
  let high = 30;
  for (let step = 0; step < 12; step += 1) {
    const middle = (low + high) / 2;
    if (alarmsPerHour(said.map((value) => value > middle)) > perHour) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Mean seconds from the onset of a ramp to the first alarm. */
function meanDelayS(
  create: () => (timeS: number, aboveK: number) => boolean,
  noise: PlateauNoise,
  slope: number,
  repeats: number,
): number {
  let sum = 0;
  let counted = 0;
  for (let repeat = 0; repeat < repeats; repeat += 1) {
    const fires = create();
    const next = noiseSource(noise, createRandom(`delay ${repeat}`));
    let before = false;
    for (let timeS = 1; timeS <= settleS + longestRampS; timeS += 1) {
      const fired = fires(timeS, next() + slope * Math.max(0, timeS - settleS));
      if (timeS <= settleS) before = fired;
      else if (fired && !before) {
        sum += timeS - settleS;
        counted += 1;
        break;
      } else if (!fired) before = false;
    }
  }
  return sum / counted;
}

/** So much false alarm is taken of either test [1/h]. */
const allowedPerHour = 0.1;
/** The most that real heads strayed within minutes; `test/reference/real-traces`. */
const wander = { wanderSdK: 0.04, wanderS: 120 } as const;

/** Delay of `plateau-ending` against the best detector with the same unknowns, at the same false-alarm rate or the one allowed. */
export function delayStudy(hours: number, repeats: number): readonly string[] {
  const lines: string[] = [];
  for (const sd of [0.03, 0.1, 0.2]) {
    const noise: PlateauNoise = { whiteSdK: 0.6 * sd, slowSdK: 0.8 * sd, slowS: 15, ...wander };
    const perHour = alarmsPerHour(onFlat(createOwn, noise, hours));
    const threshold = matchThreshold(noise, Math.max(perHour, allowedPerHour), hours);
    for (const slopeKPerMin of [0.3, 0.6, 1.2]) {
      const slope = slopeKPerMin / 60;
      const ownS = meanDelayS(createOwn, noise, slope, repeats);
      const bestS = meanDelayS(
        () => {
          const detector = createBestDetector(noise);
          return (_, above) => detector(above) > threshold;
        },
        noise,
        slope,
        repeats,
      );
      lines.push(
        `ramp ${slopeKPerMin} K/min in noise of ${sd} K: plateau-ending after ${ownS.toFixed(0)} s, best test with the same unknowns ${bestS.toFixed(0)} s, ratio ${(ownS / bestS).toFixed(2)} (false alarms ${perHour.toFixed(3)}/h)`,
      );
    }
  }
  return lines;
}
