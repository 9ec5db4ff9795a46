import type { RunStudy } from '../study/index.ts';
import { leastPlateauS, plateauBandK } from '../study/index.ts';
import { cautionBlocks } from './caution-blocks.ts';
import { comparisonBlocks, mostSideBySide } from './comparison-blocks.ts';
import type { Block, PrintedDocument } from './document.ts';
import { discussionBlocks, numbered, openingBlocks, sourceBlocks } from './hand-in-blocks.ts';
import { runBlocks } from './report-of-run.ts';

/**
 * The printed report of one or several runs, to hand in: names, aim and apparatus, results with numbered figures and tables, prompts to discuss
 * them, cautions, method and uncertainties, sources.
 *
 * @param studies at least one, from `studyRun`
 *
 * Source: this project's layout; no standard.
 * @example
 * const run = { runId: 'a', name: 'Pear', startedAtIso: '', rehearsal: true, settings: defaultRunSettings, appVersion: '0', modelVersion: '1', inputs: [], endS: 60 };
 * reportOf([studyRun(run)]).title // => "Distillation report: Pear"
 */
export function reportOf(studies: readonly RunStudy[]): PrintedDocument {
  const [first] = studies;
  const title =
    studies.length === 1
      ? `Distillation report: ${first?.name ?? ''}`
      : `Distillation report: ${studies.length} runs`;
  return {
    title,
    subtitle: runsWords(studies),
    footer: footerOf(studies),
    blocks: numbered([
      ...openingBlocks(studies),
      ...comparisonBlocks(studies),
      ...studies.flatMap((study, index): readonly Block[] => [
        ...(index > 0 || studies.length > 1 ? [{ kind: 'page-break' } as const] : []),
        ...runBlocks(study),
      ]),
      ...discussionBlocks(studies),
      // Before what fills the last pages: by themselves on one they would be laid aside with it.
      ...cautionBlocks('report'),
      ...method(studies),
      ...sourceBlocks,
    ]),
  };
}

/** Which runs they are; those of a class stand with each run below. */
function runsWords(studies: readonly RunStudy[]): string {
  const names = studies.map(({ runId }) => runId);
  return names.length > mostSideBySide ? `${names[0]} to ${names.at(-1)}` : names.join(', ');
}

/** Versions, so that a number can be traced to the model it came from. */
export function footerOf(studies: readonly RunStudy[]): string {
  const [first] = studies;
  if (first === undefined) return '';
  return `Still Head Monitor ${first.appVersion} · monitor model ${first.modelVersion} · equilibrium model ${first.equilibriumModel}`;
}

/** Which runs were judged by another model while the class watched. */
function recordedOtherwise(studies: readonly RunStudy[]): string {
  const named = studies.flatMap(({ name, modelVersion, recordedModelVersion = modelVersion }) =>
    recordedModelVersion === modelVersion || recordedModelVersion === ''
      ? []
      : [`${name} (${recordedModelVersion})`],
  );
  return named.length === 0
    ? ''
    : ` Recorded with another model version, which may have called otherwise: ${named.join(', ')}.`;
}

function method(studies: readonly RunStudy[]): readonly Block[] {
  const [first] = studies;
  return [
    { kind: 'heading', level: 2, text: 'Method and uncertainties' },
    {
      kind: 'list',
      ordered: false,
      items: [
        `Stages and calls: the monitor’s verdicts on the recorded readings and marks, made again from the record; they are the same as those shown live by the same model version.${recordedOtherwise(studies)}`,
        `Equilibrium: NRTL activity coefficients (${first?.equilibriumModel ?? ''}) with published saturation curves; the local azeotrope and the dew curve follow from the air pressure.`,
        'Strength, density and temperature: OIML R 22 (1975). Masses and ethanol are booked at 20 °C.',
        'Uncertainties: JCGM 100 (GUM), law of propagation; ± is expanded with k = 2, intervals hold 95 %. Readings with one and the same alcoholometer or hydrometer share that instrument’s own error (fully correlated, GUM 5.2.2); all else is taken as independent.',
        `Plateau: the longest stretch, of ${leastPlateauS / 60} min at least, in which the head stays within ${plateauBandK} K while it is no hotter than vapour of the least strength wanted and the heat is on. Neighbouring readings are alike, which is allowed for in the uncertainty of the mean.`,
        'Stages of the column: McCabe–Thiele steps and Fenske’s equation at total reflux, a lower bound for a working column.',
      ],
    },
  ];
}
