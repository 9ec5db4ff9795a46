import type { FermentYield, Quantity } from '../bookkeeping/index.ts';
import { coverageFactor95 } from '../uncertainty/index.ts';
import { measuredWords, worded } from '../wording/index.ts';
import { leastWords } from './least-words.ts';

/**
 * From sugar to product in one sentence, the same in the report and in the window.
 *
 * @param ferment yields with standard uncertainties; shown expanded with k = 2
 * @param isProductWhole false where a cut was not measured: what was collected is then a least amount
 *
 * Source: see `fermentYield`.
 * @example
 * const exact = (value) => ({ value, standardUncertainty: 0.5 });
 * fermentSentence(fermentYield({ sugarG: exact(100), fermentEthanolG: exact(48.4), productEthanolG: exact(40) })).startsWith('From sugar to product: at most (51.14') // => true
 */
export function fermentSentence(ferment: FermentYield, isProductWhole = true): string {
  const { theoreticalG, fermentationPercent, distillationPercent, overallPercent } = ferment;
  const collected = (percent: Quantity) => leastWords(measuredWords(percent, '%'), isProductWhole);
  const sentence = worded(
    'From sugar to product: at most {most} of ethanol (Gay-Lussac). Fermentation {fermentation}, distillation {distillation}, overall {overall}.',
    {
      most: measuredWords(theoreticalG, 'g'),
      fermentation: measuredWords(fermentationPercent, '%'),
      distillation: collected(distillationPercent),
      overall: collected(overallPercent),
    },
  );
  const { value, standardUncertainty } = fermentationPercent;
  return value - coverageFactor95 * standardUncertainty > 100
    ? worded('{sentence} More than the sugar can give: sugar, volume or strength was misread.', {
        sentence,
      })
    : sentence;
}
