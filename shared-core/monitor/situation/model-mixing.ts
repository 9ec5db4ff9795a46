import { copyInto, type HeadGaussian, newGaussian, place, size } from './head-gaussian.ts';
import { addScaled, addSpread, clear, copyValues } from './small-matrix.ts';
import { changes, changesCourse, leaves, models } from './vapour-models.ts';

/** Interaction of the models: each goes on from a mixture of all, by the probabilities of a change within a second. */
export interface ModelMixing {
  /** Mixes beliefs and probabilities, in place. */
  mix(beliefs: readonly HeadGaussian[], probabilities: Float64Array): void;
  /** Without a reading only the probabilities change: states mixed again and again would lose what each model holds. */
  wait(probabilities: Float64Array): void;
}

const count = models.length;
/** Vapour that has come back at another level shows it by the bulb it bathes: so far from it it may be [K]. */
const newLevelSdK = 1.5;

/** Equations (3)–(5) of the source named at the filter. */
export function createModelMixing(): ModelMixing {
  const mixed = models.map(newGaussian);
  const renewed = newGaussian();
  const into = new Float64Array(count);
  const shares = new Float64Array(count);

  /** Where a model's share comes from: vapour that changes its course after it was away is told by the bulb. */
  const source = (beliefs: readonly HeadGaussian[], from: number, to: number): HeadGaussian =>
    models[from] === leaves && models[to] === changesCourse
      ? renewed
      : (beliefs[from] as HeadGaussian);

  const mixInto = (
    to: number,
    beliefs: readonly HeadGaussian[],
    probabilities: Float64Array,
  ): void => {
    const { mean, covariance } = mixed[to] as HeadGaussian;
    clear(mean);
    clear(covariance);
    for (let from = 0; from < count; from += 1) {
      shares[from] = flow(from, to, probabilities) / (into[to] as number);
      addScaled(mean, source(beliefs, from, to).mean, shares[from] as number);
    }
    for (let from = 0; from < count; from += 1) {
      const belief = source(beliefs, from, to);
      addSpread(covariance, belief.covariance, belief.mean, mean, shares[from] as number);
    }
  };

  const gather = (probabilities: Float64Array): void => {
    for (let to = 0; to < count; to += 1) into[to] = flowInto(to, probabilities);
  };

  return {
    mix: (beliefs, probabilities) => {
      renew(renewed, beliefs[models.indexOf(leaves)] as HeadGaussian);
      gather(probabilities);
      for (let to = 0; to < count; to += 1) mixInto(to, beliefs, probabilities);
      for (let to = 0; to < count; to += 1) {
        copyInto(beliefs[to] as HeadGaussian, mixed[to] as HeadGaussian);
      }
      copyValues(probabilities, into);
    },
    wait: (probabilities) => {
      gather(probabilities);
      copyValues(probabilities, into);
    },
  };
}

function renew(renewed: HeadGaussian, dry: HeadGaussian): void {
  copyInto(renewed, dry);
  const { mean, covariance } = renewed;
  mean[place.vapour] = mean[place.bulb] as number;
  mean[place.rate] = 0;
  for (let at = 1; at < size; at += 1) {
    covariance[at] = 0;
    covariance[at * size] = 0;
  }
  covariance[place.vapour] = newLevelSdK ** 2;
}

function flowInto(to: number, probabilities: Float64Array): number {
  let total = 0;
  for (let from = 0; from < count; from += 1) total += flow(from, to, probabilities);
  return total;
}

function flow(from: number, to: number, probabilities: Float64Array): number {
  return ((changes[from] as readonly number[])[to] as number) * (probabilities[from] as number);
}
