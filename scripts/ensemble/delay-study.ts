import { createRandom, defaultRunSettings, type RunSettings } from '#shared-core';
import { createHeadTracker } from '../../shared-core/monitor/sense/index.ts';
import { createHeadCourse, createLimitScale } from '../../shared-core/monitor/situation/index.ts';
import type { Random } from '../../shared-core/random/index.ts';
import { createBestDetector, type PlateauNoise } from './best-detector.ts';

const plateauC = 78.4;
const standardAir = { pressureKPa: 101.325, standardUncertaintyKPa: 0.1 } as const;
const settleS = 1200;
const longestRampS = 1800;
/** Two alarms closer together than this are one. */
const oneAlarmS = 600;

function noiseSource(noise: PlateauNoise, random: Random): () => number {
  const kept = Math.exp(-1 / noise.slowS);
  let slow = noise.slowSdK * random.normal();
  return () => {
    slow = kept * slow + noise.slowSdK * Math.sqrt(1 - kept * kept) * random.normal();
    return slow + noise.whiteSdK * random.normal();
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
    course.second(timeS, { timeS, value, count: 1, spread: 0 }, { potC: null, isQuiet: true })
      .situation.departedS !== null;
  for (let timeS = 0; timeS <= warmUpS; timeS += 1) isEnding(timeS, warmingUpC(timeS));
  return (timeS, readingC) => isEnding(warmUpS + timeS, readingC);
}

function falseAlarmsPerHour(
  fires: (timeS: number, reading: number) => boolean,
  noise: PlateauNoise,
  hours: number,
  seed: string,
): number {
  const next = noiseSource(noise, createRandom(seed));
  let alarms = 0;
  let lastS = Number.NEGATIVE_INFINITY;
  for (let timeS = 1; timeS <= settleS + 3600 * hours; timeS += 1) {
    const fired = fires(timeS, next());
    if (timeS <= settleS || !fired) continue;
    if (timeS - lastS > oneAlarmS) alarms += 1;
    lastS = timeS;
  }
  return alarms / hours;
}

/** Threshold at which the best detector gives as few false alarms; by bisection on the same noise. */
function matchThreshold(
  noise: PlateauNoise,
  slope: number,
  perHour: number,
  hours: number,
): number {
  let low = 1;
  let high = 20;
  for (let step = 0; step < 7; step += 1) {
    const middle = (low + high) / 2;
    const detector = createBestDetector(noise, slope);
    const rate = falseAlarmsPerHour((_, value) => detector(value) > middle, noise, hours, 'match');
    if (rate > perHour) low = middle;
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

/** Delay of `plateau-ending` against the best detector that knows the slope, at equal false-alarm rates. */
export function delayStudy(hours: number, repeats: number): readonly string[] {
  const lines: string[] = [];
  for (const sd of [0.03, 0.1, 0.2]) {
    const noise: PlateauNoise = { whiteSdK: 0.6 * sd, slowSdK: 0.8 * sd, slowS: 15 };
    const own = createMonitorDetector();
    const perHour = falseAlarmsPerHour(
      (timeS, value) => own(timeS, plateauC + value),
      noise,
      hours,
      'own',
    );
    for (const slopeKPerMin of [0.3, 0.6, 1.2]) {
      const slope = slopeKPerMin / 60;
      // No alarm at all in so many hours is taken for one in as many.
      const threshold = matchThreshold(noise, slope, Math.max(perHour, 1 / hours), hours);
      const ownS = meanDelayS(
        () => {
          const detector = createMonitorDetector();
          return (timeS, above) => detector(timeS, plateauC + above);
        },
        noise,
        slope,
        repeats,
      );
      const bestS = meanDelayS(
        () => {
          const detector = createBestDetector(noise, slope);
          return (_, above) => detector(above) > threshold;
        },
        noise,
        slope,
        repeats,
      );
      lines.push(
        `ramp ${slopeKPerMin} K/min in noise of ${sd} K: plateau-ending after ${ownS.toFixed(0)} s, best known-slope test ${bestS.toFixed(0)} s, ratio ${(ownS / bestS).toFixed(2)} (false alarms ${perHour.toFixed(3)}/h)`,
      );
    }
  }
  return lines;
}
