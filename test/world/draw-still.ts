import type { Random } from '../../shared-core/random/create-random.ts';

/** What hangs in the still, by the name its probe gives it. */
export type Place = 'head' | 'pot' | 'room' | 'ferment';

export interface SimulatedStill {
  /** Half a second goes by. */
  step(stepS: number): void;
  setHeat(isOn: boolean): void;
  temperatureC(place: Place): number;
}

const roomC = 21;
/** How fast the glass follows a flame that is put there and taken away [s]. */
const warmsInS = 60;
const coolsInS = 200;

/** A head that warms up, holds and leaves, with the noise of a bulb; without heat it cools and its time stands still. */
export function drawStill(random: Random, lengthS: number): SimulatedStill {
  const arrivesS = (0.1 + 0.1 * random.uniform()) * lengthS;
  const leavesS = arrivesS + (lengthS - arrivesS) * (0.2 + 0.5 * random.uniform());
  const leavesKPerS = 0.005 + 0.06 * random.uniform();
  const noise = random.fork('noise');
  let isHot = true;
  let heatedS = 0;
  let warmth = 1;

  function courseC(): number {
    if (heatedS < arrivesS) return roomC + heatedS * 0.01;
    if (heatedS < arrivesS + 60) return 24 + ((heatedS - arrivesS) / 60) * 54.3;
    return heatedS < leavesS ? 78.3 : Math.min(99.5, 78.3 + (heatedS - leavesS) * leavesKPerS);
  }

  return {
    step(stepS) {
      if (isHot) heatedS += stepS;
      const target = isHot ? 1 : 0;
      warmth += ((target - warmth) * stepS) / (isHot ? warmsInS : coolsInS);
    },
    setHeat(isOn) {
      isHot = isOn;
    },
    temperatureC(place) {
      const headC = roomC + (courseC() - roomC) * warmth;
      if (place === 'head') return headC + 0.03 * noise.normal();
      if (place === 'ferment') return 29.4 + 0.03 * noise.normal();
      return place === 'pot' ? Math.min(101, headC + 9) : 14.2;
    },
  };
}
