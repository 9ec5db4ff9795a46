import type { Random } from '../../shared-core/random/create-random.ts';

/** A head that warms up, holds and leaves, with the noise of a bulb. */
export function drawStill(random: Random, lengthS: number) {
  const arrivesS = 60 + random.uniform() * 60;
  const leavesS = arrivesS + (lengthS - arrivesS) * (0.4 + 0.4 * random.uniform());
  const noise = random.fork('noise');
  return (atS: number) => {
    const unevenC = 0.03 * noise.normal();
    if (atS < arrivesS) return 22 + atS * 0.02 + unevenC;
    if (atS < arrivesS + 60) return 24 + ((atS - arrivesS) / 60) * 54.3 + unevenC;
    if (atS < leavesS) return 78.3 + unevenC;
    return Math.min(99.5, 78.3 + (atS - leavesS) * 0.06) + unevenC;
  };
}
