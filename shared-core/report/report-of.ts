import { overlayFigure } from '../figures/index.ts';
import type { Block, PrintedDocument } from './document.ts';
import { intervalWords, measuredWords } from './measured-words.ts';
import { reportCautions } from './report-cautions.ts';
import { runBlocks } from './report-of-run.ts';
import type { RunStudy } from './study-run.ts';

/**
 * The printed report of one or several runs: results first, then figures, tables, method, uncertainties and cautions.
 *
 * @param studies at least one, from `studyRun`
 *
 * Source: this project's layout; no standard.
 * @example
 * const run = { runId: 'a', name: 'Pear', startedAtIso: '', rehearsal: true, damagedRecords: 0, settings: defaultRunSettings, appVersion: '0', modelVersion: '1', inputs: [], endS: 60 };
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
    subtitle: studies.map(({ runId }) => runId).join(', '),
    footer: footerOf(studies),
    blocks: [
      ...comparison(studies),
      ...studies.flatMap((study, index): readonly Block[] => [
        ...(index > 0 || studies.length > 1 ? [{ kind: 'page-break' } as const] : []),
        ...runBlocks(study),
      ]),
      ...method(studies),
      { kind: 'heading', level: 2, text: 'Cautions' },
      ...reportCautions.map((text) => ({ kind: 'caution', text }) as const),
    ],
  };
}

/** Versions, so that a number can be traced to the model it came from. */
export function footerOf(studies: readonly RunStudy[]): string {
  const [first] = studies;
  if (first === undefined) return '';
  return `Still Head Monitor ${first.appVersion} · monitor model ${first.modelVersion} · equilibrium model ${first.equilibriumModel}`;
}

/** Runs side by side, e.g. simple and fractional; nothing for a single run. */
function comparison(studies: readonly RunStudy[]): readonly Block[] {
  const drawing = overlayFigure(studies);
  if (drawing === null) return [];
  const rows: readonly (readonly [string, (study: RunStudy) => string])[] = [
    ['Plateau', ({ plateau }) => (plateau === null ? 'none' : measuredWords(plateau.mean, '°C'))],
    [
      'Plateau at 101.325 kPa',
      ({ plateau }) => (plateau === null ? '–' : measuredWords(plateau.standard, '°C')),
    ],
    [
      'Scatter on the plateau',
      ({ plateau }) =>
        plateau === null ? '–' : `${plateau.statistics.standardDeviationK.toFixed(2)}\u00a0K`,
    ],
    [
      'Mean strength of the cuts',
      ({ product }) => (product === null ? '–' : `${product.strengthAbv.toFixed(1)}\u00a0% vol`),
    ],
    [
      'Ethanol recovered',
      ({ books }) =>
        books.balance === null ? '–' : measuredWords(books.balance.ethanol.recoveryPercent, '%'),
    ],
    [
      'Apparent stages',
      ({ plates }) => {
        const stepped = plates?.plates.stepped;
        if (stepped?.value == null || stepped.low === null) return '–';
        if (stepped.high === null) return `at least ${stepped.low.toFixed(1)}`;
        return intervalWords({ value: stepped.value, low: stepped.low, high: stepped.high }, '');
      },
    ],
    ['Main fraction', ({ verdicts }) => (verdicts.verdict.mainFraction ? 'yes' : 'no')],
  ];
  return [
    { kind: 'heading', level: 1, text: 'The runs side by side' },
    {
      kind: 'figure',
      drawing,
      caption: 'Head temperatures, counted from the arrival of vapour.',
    },
    {
      kind: 'table',
      caption: 'Comparison (±: k = 2)',
      columns: [
        { title: '', align: 'start', width: 3 },
        ...studies.map(
          (_, index) => ({ title: `Run ${index + 1}`, align: 'end', width: 3 }) as const,
        ),
      ],
      rows: rows.map(([name, words]) => [name, ...studies.map(words)]),
    },
  ];
}

function method(studies: readonly RunStudy[]): readonly Block[] {
  const [first] = studies;
  return [
    { kind: 'heading', level: 2, text: 'Method and uncertainties' },
    {
      kind: 'list',
      ordered: false,
      items: [
        'Stages and calls: the monitor’s verdicts on the recorded readings and marks, made again from the record; they are the same as those shown live by the same model version.',
        `Equilibrium: NRTL activity coefficients (${first?.equilibriumModel ?? ''}) with published saturation curves; the local azeotrope and the dew curve follow from the air pressure.`,
        'Strength, density and temperature: OIML R 22 (1975). Masses and ethanol are booked at 20 °C.',
        'Uncertainties: JCGM 100 (GUM), law of propagation; ± is expanded with k = 2, intervals hold 95 %. Readings with one and the same alcoholometer or hydrometer share that instrument’s own error (fully correlated, GUM 5.2.2); all else is taken as independent.',
        'Plateau: the longest stretch within 1 K while vapour bathes the bulb. Neighbouring readings are alike, which is allowed for in the uncertainty of the mean.',
        'Stages of the column: McCabe–Thiele steps and Fenske’s equation at total reflux, a lower bound for a working column.',
      ],
    },
  ];
}
