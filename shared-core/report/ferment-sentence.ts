import type { FermentYield } from '../bookkeeping/index.ts';
import { coverageFactor95 } from '../uncertainty/index.ts';
import { measuredWords, worded } from '../wording/index.ts';

/**
 * From sugar to product in one sentence, the same in the report and in the window.
 *
 * @param ferment yields with standard uncertainties; shown expanded with k = 2
 *
 * Source: see `fermentYield`.
 * @example
 * const exact = (value) => ({ value, standardUncertainty: 0.5 });
 * fermentSentence(fermentYield({ sugarG: exact(100), fermentEthanolG: exact(48.4), productEthanolG: exact(40) })).startsWith('From sugar to product: at most (51.14') // => true
 */
export function fermentSentence(ferment: FermentYield): string {
  const { theoreticalG, fermentationPercent, distillationPercent, overallPercent } = ferment;
  const sentence = worded(
    'From sugar to product: at most {most} of ethanol (Gay-Lussac). Fermentation {fermentation}, distillation {distillation}, overall {overall}.',
    {
      most: measuredWords(theoreticalG, 'g'),
      fermentation: measuredWords(fermentationPercent, '%'),
      distillation: measuredWords(distillationPercent, '%'),
      overall: measuredWords(overallPercent, '%'),
    },
  );
  const { value, standardUncertainty } = fermentationPercent;
  return value - coverageFactor95 * standardUncertainty > 100
    ? worded('{sentence} More than the sugar can give: sugar, volume or strength was misread.', {
        sentence,
      })
    : sentence;
}
