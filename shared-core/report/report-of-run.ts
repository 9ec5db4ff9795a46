import { ethanolFigure, plateFigure, strengthFigure, temperatureFigure } from '../figures/index.ts';
import type { RunStudy } from '../study/index.ts';
import { leastPlateauS, plateauBandK, runKind, unmeasuredBeforeMain } from '../study/index.ts';
import { clockWords, intervalWords, measuredWords } from '../wording/index.ts';
import { bookTables } from './book-tables.ts';
import type { Block } from './document.ts';
import { fermentSentence } from './ferment-sentence.ts';
import { fromFermentFigure } from './from-ferment-blocks.ts';
import { leastWords } from './least-words.ts';
import { proofBlocks } from './proof-blocks.ts';
import { alarmsTable, settingsTable, stagesTable } from './report-tables.ts';
import { volumeBlocks } from './volume-blocks.ts';

/** The part of the report that is about one run. */
export function runBlocks(study: RunStudy): readonly Block[] {
  return [
    { kind: 'heading', level: 1, text: study.name },
    ...results(study),
    ...courseBlocks(study),
    ...volumeBlocks(study),
    ...bookBlocks(study),
    ...proofBlocks(study),
    ...plateBlocks(study),
    ...doubts(study),
  ];
}

/** What happened when; a table by volume has no times to tell of. */
function courseBlocks(study: RunStudy): readonly Block[] {
  if (study.byVolume?.basis === 'table') return [settingsTable(study)];
  return [
    figure(
      temperatureFigure(study, { stages: true, plateauBand: true }),
      'Head temperature with the stages as called. Shaded: between the azeotrope and the least strength wanted, at the local air pressure.',
    ),
    settingsTable(study),
    stagesTable(study),
    ...present(alarmsTable(study)),
    ...strengthBlocks(study),
  ];
}

function figure(drawing: Extract<Block, { kind: 'figure' }>['drawing'], caption: string): Block {
  return { kind: 'figure', drawing, caption };
}

const present = (block: Block | null): readonly Block[] => (block === null ? [] : [block]);

function results(study: RunStudy): readonly Block[] {
  const { verdicts, plateau, product, books, plates, rehearsal, settings } = study;
  const stepped = plates?.plates.stepped;
  const items = [
    verdicts.verdict.because,
    ...(study.byVolume?.basis === 'table'
      ? [
          'Taken by volume: the table has no times, so there are no stages, no plateau and no duration.',
        ]
      : plateau === null
        ? [
            `No plateau to report: the head never stayed within ${plateauBandK} K for ${leastPlateauS / 60} min at ${settings.leastStrengthAbv} % vol or more.`,
          ]
        : [
            `Plateau from ${clockWords(plateau.statistics.span.fromS)} to ${clockWords(plateau.statistics.span.toS)}: ${measuredWords(plateau.mean, '°C')}, ${measuredWords(plateau.aboveAzeotropeK, 'K')} above the azeotrope; at 101.325 kPa it would read ${measuredWords(plateau.standard, '°C')}. Drift ${measuredWords(plateau.statistics.driftKPerH, 'K/h')}.`,
          ]),
    ...(product === null || books.balance === null
      ? ['No cut was measured, so there is no recovery to report.']
      : [
          `${collectedWords(books)}: ${measuredWords(product.volumeMl, 'mL')} at 20 °C of ${intervalWords(product.strengthAbv, '% vol')}${isByHead(books) ? ', the strength in part or all by the head temperature' : ''}; ethanol recovered: ${leastWords(measuredWords(books.balance.ethanol.recoveryPercent, '%'), books.unmeasuredCuts.length === 0)}.`,
        ]),
    ...(stepped?.value == null
      ? []
      : [
          `Apparent stages at total reflux: ${stepped.value.toFixed(1)} (${(stepped.low ?? 0).toFixed(1)} to ${stepped.high === null ? 'no upper end' : stepped.high.toFixed(1)}).`,
        ]),
  ];
  return [
    ...(rehearsal
      ? [
          {
            kind: 'caution',
            text: 'A rehearsal with the simulated still. No liquid was distilled.',
          } as const,
        ]
      : []),
    ...(study.imported === true
      ? [
          {
            kind: 'paragraph',
            text: 'Imported: the readings were taken in from a file of another logger. Charge, pressure and rig are as stated when it was taken in.',
          } as const,
        ]
      : []),
    { kind: 'list', ordered: false, items },
  ];
}

const isByHead = ({ cuts }: RunStudy['books']) =>
  cuts.some(({ booked, strengthFrom }) => booked !== null && strengthFrom === 'head-temperature');

function collectedWords({ cuts, unmeasuredCuts }: RunStudy['books']): string {
  const measured = cuts.flatMap(({ number, booked }) => (booked === null ? [] : [number]));
  return unmeasuredCuts.length === 0
    ? 'All cuts together'
    : `Of the cuts only ${measured.join(', ')} ${measured.length === 1 ? 'was' : 'were'} measured`;
}

function strengthBlocks(study: RunStudy): readonly Block[] {
  const drawing = strengthFigure(study);
  if (drawing === null) return [];
  return [
    figure(
      drawing,
      'Strength of the head vapour as the monitor told it (means), with what it learned of probe and air pressure during the run. Shaded: 95 % interval. Where it told none there is no line.',
    ),
  ];
}

function bookBlocks(study: RunStudy): readonly Block[] {
  const { books, simple, product } = study;
  const ethanol = ethanolFigure(books);
  const fromSugar = fromFermentFigure(books.fromFerment);
  const [liquids, ...balances] = bookTables(books);
  return [
    ...(liquids === undefined ? [] : [liquids]),
    ...(ethanol === null ? [] : [figure(ethanol, 'Where the ethanol went.')]),
    ...balances,
    ...(books.ferment === null
      ? []
      : [
          {
            kind: 'paragraph',
            text: fermentSentence(books.ferment, books.unmeasuredCuts.length === 0),
          } as const,
        ]),
    ...(fromSugar === null
      ? []
      : [
          figure(
            fromSugar,
            'From sugar to distillate; whiskers: k = 2, the log’s from the interval of its judge.',
          ),
        ]),
    ...(simple === null || product === null
      ? []
      : [
          {
            kind: 'paragraph',
            text: rayleighSentence(study, simple, product),
          } as const,
        ]),
  ];
}

/** What Rayleigh's equation expects of the same charge, beside what was measured. */
function rayleighSentence(
  { settings, books }: RunStudy,
  simple: NonNullable<RunStudy['simple']>,
  product: NonNullable<RunStudy['product']>,
): string {
  const expected = `${simple.strengthAbv.toFixed(1)} % vol`;
  const found = intervalWords(product.strengthAbv, '% vol');
  const measured = isByHead(books)
    ? `by the head temperature it had ${found}`
    : `measured were ${found}`;
  const share = `${simple.recoveryPercent.toFixed(0)} % of the ethanol`;
  return runKind(settings) === 'simple'
    ? `Simple distillation: for as many moles of distillate Rayleigh’s equation expects ${expected} and ${share}; ${measured}.`
    : `Simple and fractional: without a column the same charge would have given the same moles of distillate at ${expected} (Rayleigh) instead of ${found}, and ${share}.`;
}

function plateBlocks({ plates }: RunStudy): readonly Block[] {
  if (plates === null) return [];
  const { stepped, steppedAtReflux, fenske, whyTheyDiffer } = plates.plates;
  const stages = (count: typeof stepped) =>
    count.value === null
      ? 'none (azeotrope or pinch in the way)'
      : `${count.value.toFixed(1)} (${(count.low ?? 0).toFixed(1)} to ${count.high === null ? 'no upper end' : count.high.toFixed(1)})`;
  return [
    {
      kind: 'table',
      caption: `Apparent equilibrium stages, the pot counted, ${plates.basis}`,
      columns: [
        { title: 'Method', align: 'start', width: 5 },
        { title: 'Stages', align: 'end', width: 4 },
      ],
      rows: [
        ['Stepping the equilibrium curve, total reflux', stages(stepped)],
        ...(steppedAtReflux === null
          ? []
          : [['Stepping at the reflux ratio entered', stages(steppedAtReflux)]]),
        ['Fenske, one mean relative volatility', fenske === null ? '–' : fenske.toFixed(1)],
      ],
    },
    { kind: 'paragraph', text: whyTheyDiffer },
    figure(
      plateFigure(plates, true),
      `Equilibrium at ${plates.pressureKPa.toFixed(1)} kPa (mole fractions; interval of the distillate ${intervalWords(plates.distillateMoleFraction, 'mol/mol')}) and steps at total reflux.`,
    ),
  ];
}

function doubts({ books, leftOut = [], verdicts, corrections = [] }: RunStudy): readonly Block[] {
  const beforeMain = unmeasuredBeforeMain(books);
  const items = [
    ...corrections,
    ...books.assumptions,
    ...(beforeMain.length === 0
      ? []
      : [
          `No stages are counted from the main cut: cut ${beforeMain.join(', ')} was taken away before it and not measured, so nobody knows what the pot still held.`,
        ]),
    ...verdicts.problems.map(({ problem }) => problem),
    ...leftOut,
  ];
  if (items.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Corrected, taken for granted, and left out' },
    { kind: 'list', ordered: false, items },
  ];
}
