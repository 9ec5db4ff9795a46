/**
 * Fits the activity model to the published sets in test/reference/vle and prints how well it does,
 * on the sets it saw and on each set left out in turn.
 *
 * Usage: npx tsx scripts/fit-activity-model.ts
 */
import path from 'node:path';
import { nrtlParameters } from '../shared-core/equilibrium/index.ts';
import { dewErrorsByHeight } from './activity-model/dew-errors.ts';
import {
  chosenVariant,
  deviations,
  fitModel,
  type ModelVariant,
} from './activity-model/fit-model.ts';
import { rootMeanSquare, type SetErrors, setErrors } from './activity-model/set-errors.ts';
import { readVleSets, type VleSet } from './activity-model/vle-set.ts';

const sets = readVleSets(path.join(import.meta.dirname, '..', 'test', 'reference', 'vle'));

const fitted = fitModel(sets, chosenVariant);
console.log('Parameters fitted now, and those the program uses:');
console.table({ fitted, used: nrtlParameters });

console.log('Sets seen by the fit:');
console.table(sets.map((set) => row(setErrors(set, fitted))));

const leftOut = sets.map((set) => ({ set, parameters: fitModel(without(set), chosenVariant) }));
console.log('Each set left out of the fit in turn:');
console.table(leftOut.map(({ set, parameters }) => row(setErrors(set, parameters))));

console.log(
  'Dew temperature of the measured vapours, sets left out, by height above the azeotrope:',
);
console.table(dewErrorsByHeight(leftOut));

console.log('Would another form do better on the sets left out? RMS in T [K] and y:');
console.table(
  variants().map(({ alpha, guide, vapour }) => {
    const variant = { alpha, guide, vapour };
    const all = sets.flatMap((set) => {
      const parameters = fitModel(without(set), variant);
      return set.points.map((point) => ({ set, ...deviations(point, parameters, variant) }));
    });
    const perSet = sets.map((set) =>
      rootMeanSquare(all.filter((d) => d.set === set).map((d) => d.temperatureK)),
    );
    return {
      ...variant,
      'mean of sets, T': rounded(perSet.reduce((sum, v) => sum + v, 0) / perSet.length, 3),
      'worst set, T': rounded(Math.max(...perSet), 3),
      'all points, y': rounded(
        rootMeanSquare(all.flatMap((d) => (d.vapour === null ? [] : [d.vapour]))),
        4,
      ),
    };
  }),
);

function without(left: VleSet): readonly VleSet[] {
  return sets.filter((set) => set !== left);
}

function variants(): readonly ModelVariant[] {
  const alphas = ['constant', 'linear in T'] as const;
  const guides = ['none', 'excess enthalpy'] as const;
  const vapours = ['ideal', 'virial'] as const;
  return alphas.flatMap((alpha) =>
    guides.flatMap((guide) => vapours.map((vapour) => ({ alpha, guide, vapour }))),
  );
}

function row(errors: SetErrors): Readonly<Record<string, string | number>> {
  return {
    set: errors.name,
    'T rms K': rounded(errors.temperatureRmsK, 3),
    'T bias K': rounded(errors.temperatureBiasK, 3),
    'P rms %': rounded(errors.pressureRmsPercent, 2),
    'y rms': errors.vapourRms === null ? '-' : rounded(errors.vapourRms, 4),
  };
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
