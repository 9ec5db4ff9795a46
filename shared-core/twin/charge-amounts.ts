import { mixtureAmounts } from '../thermo/index.ts';

/** Amounts in one millilitre of charge. */
export interface AmountsPerMl {
  readonly ethanolMol: number;
  readonly waterMol: number;
}

const strongestAbv = 60;
let remembered: readonly AmountsPerMl[] | null = null;

/** Amounts per millilitre of a charge of 0 … 60 % vol, interpolated between whole per cents. */
export function chargeAmounts(strengthAbv: number): AmountsPerMl {
  remembered ??= Array.from({ length: strongestAbv + 1 }, (_, abv) =>
    mixtureAmounts({ volumeMl: 1, strengthAbv: abv }),
  );
  const bounded = Math.max(0, Math.min(strongestAbv - 1e-9, strengthAbv));
  const cell = Math.floor(bounded);
  const share = bounded - cell;
  const low = remembered[cell] as AmountsPerMl;
  const high = remembered[cell + 1] as AmountsPerMl;
  return {
    ethanolMol: low.ethanolMol * (1 - share) + high.ethanolMol * share,
    waterMol: low.waterMol * (1 - share) + high.waterMol * share,
  };
}
