import type { NinetyInterval } from '../ferment/index.ts';
import { fermentFigure, fermentStrengthFigure, gravitiesFigure } from '../figures/index.ts';
import type { FermentStudy } from '../study/index.ts';
import { measuredWords, numberWords } from '../wording/index.ts';
import { cautionBlocks } from './caution-blocks.ts';
import type { Block, DocumentTable, PrintedDocument } from './document.ts';
import { massesFigure, massesOfFerment } from './ferment-steps.ts';
import { numbered } from './hand-in-blocks.ts';

const dayMs = 86_400_000;

/** The report of one or several ferments' weeks: what each came to, its week, its log, its warmth, its balance, and how it was worked out. */
export function reportOfFerments(studies: readonly FermentStudy[]): PrintedDocument {
  const [first] = studies;
  const gravities = overlayOfFerments(studies);
  return {
    title:
      studies.length === 1
        ? `Ferment report: ${first?.name ?? ''}`
        : `Ferment report: ${studies.length} ferments`,
    subtitle: studies.map(({ runId }) => runId).join(', '),
    footer: footerOfFerments(studies),
    blocks: numbered([
      { kind: 'paragraph', text: 'Names ______________________________  Date ____________' },
      { kind: 'heading', level: 2, text: 'Aim' },
      {
        kind: 'paragraph',
        text: 'To let yeast turn sugar into ethanol, to follow it by what is read each day, and to say how much of the sugar became ethanol.',
      },
      ...(gravities === null
        ? []
        : [
            {
              kind: 'figure',
              drawing: gravities,
              caption: 'Gravities of all ferments at 20 °C.',
            } as const,
          ]),
      ...studies.flatMap((study, index): readonly Block[] => [
        ...(index === 0 && studies.length === 1 ? [] : [{ kind: 'page-break' } as const]),
        ...weekBlocks(study),
      ]),
      { kind: 'heading', level: 2, text: 'Discussion' },
      {
        kind: 'list',
        ordered: true,
        items: [
          'By which readings is the strength known best? What would a better instrument change?',
          'When did it go fastest, and why not at first and not at last?',
          'How much of the sugar became ethanol, and where may the rest be?',
          ...(studies.length > 1
            ? ['By more than their intervals: in what do the ferments differ, and why?']
            : []),
        ],
      },
      ...cautionBlocks('ferment'),
      ...method,
    ]),
  };
}

/** Gravities of several ferments over one another. */
export function overlayOfFerments(studies: readonly FermentStudy[]) {
  return gravitiesFigure(
    studies.map(({ name, moments }) => ({
      name,
      readings: moments.flatMap(({ timeH, gravityAt20C }) =>
        gravityAt20C === null ? [] : [{ timeH, gravity: gravityAt20C }],
      ),
    })),
  );
}

/** Its week in rows over the days, with the end that is expected where it may be told. */
export function weekFigure(study: FermentStudy, isSolved = true) {
  const { moments, stretches, band, kept, verdict } = study;
  const beganMs = Date.parse(kept.stated.beganAtIso);
  const heard = stretches.map(({ atIso, meanC }) => ({
    timeH: Math.max(0, (Date.parse(atIso) - beganMs) / 3_600_000),
    temperatureC: meanC,
  }));
  return fermentFigure({
    readings: moments.map(({ timeH, gravityAt20C, read }) => ({
      timeH,
      gravity: gravityAt20C,
      massG: read.massG,
      temperatureC: read.temperatureC,
      bubblesPerMin: read.bubblesPerMin,
      isDegassed: read.treatments.includes('degassed'),
    })),
    endGravity: isSolved ? verdict.expectedEndGravity : null,
    warmth: { heard, band },
  });
}

export function footerOfFerments([first]: readonly FermentStudy[]): string {
  return first === undefined ? '' : `Still Head Monitor ${first.appVersion}`;
}

const ninety = ({ low, value, high }: NinetyInterval, decimals: number, unit: string): string =>
  `${numberWords(value, decimals)}${unit} (${numberWords(low, decimals)} to ${numberWords(high, decimals)}${unit})`;

function weekBlocks(study: FermentStudy): readonly Block[] {
  const week = weekFigure(study);
  const strength = fermentStrengthFigure(study.course);
  return [
    { kind: 'heading', level: 1, text: study.name },
    { kind: 'list', ordered: false, items: resultsOf(study) },
    ...(week === null
      ? []
      : [
          {
            kind: 'figure',
            drawing: week,
            caption:
              'The week as entered and heard, gravities at 20 °C. Shaded: the gravity expected at its end, and the warmth wanted.',
          } as const,
        ]),
    ...(study.moments.length === 0 ? [] : [readingsTable(study)]),
    ...(strength === null
      ? []
      : [
          {
            kind: 'figure',
            drawing: strength,
            caption: 'Strength by the readings up to each moment. Shaded: 90 % interval.',
          } as const,
        ]),
    ...(study.days.length === 0 ? [] : [daysTable(study)]),
    ...balanceBlocks(study),
  ];
}

function resultsOf({ verdict, kept, advice, band, stretches }: FermentStudy): readonly string[] {
  const { strengthAbv, originalGravity, expectedEndGravity, donePercent, problems } = verdict;
  return [
    verdict.because,
    statementOf(kept.stated),
    ...kept.corrections.map(
      ({ keptAtIso, reason, before }) =>
        `What was stated was corrected on day ${numberWords((Date.parse(keptAtIso) - Date.parse(kept.stated.beganAtIso)) / dayMs, 1)}: ${reason}. Until then: ${statementOf(before)}`,
    ),
    ...(strengthAbv === null ? [] : [`Strength by its log: ${ninety(strengthAbv, 1, ' % vol')}.`]),
    ...(originalGravity === null
      ? []
      : [`Gravity before anything fermented: ${ninety(originalGravity, 3, '')}.`]),
    ...(expectedEndGravity === null
      ? []
      : [`Gravity expected at its end: ${ninety(expectedEndGravity, 3, '')}.`]),
    ...(donePercent === null
      ? []
      : [`Of what can ferment has fermented: ${ninety(donePercent, 0, ' %')}.`]),
    advice.isGo
      ? 'By its log it is ready for the still: finished, degassed, settled and strained.'
      : `By its log it is not ready for the still; not met: ${advice.unmet.join(', ')}.`,
    ...(stretches.length === 0
      ? []
      : [
          `Kept under watch between ${numberWords(band.lowC, 1)} and ${numberWords(band.highC, 1)} °C.`,
        ]),
    ...problems,
  ];
}

function statementOf({ wentIn, volumeMl, sugarG }: FermentStudy['kept']['stated']): string {
  const sugar =
    sugarG === null
      ? 'sugar not stated'
      : `sugar as hexose ${numberWords(sugarG.low, 0)} to ${numberWords(sugarG.high, 0)} g`;
  return `Volume ${numberWords(volumeMl, 0)} mL; ${sugar}${wentIn === '' ? '' : `; in it: ${wentIn}`}.`;
}

const column = (title: string, width: number, align: 'start' | 'end' = 'end') => ({
  title,
  width,
  align,
});

function readingsTable({ moments }: FermentStudy): DocumentTable {
  const cell = (value: number | null, decimals: number) =>
    value === null ? '–' : numberWords(value, decimals);
  return {
    kind: 'table',
    caption: 'What was read (gravity at 20 °C)',
    columns: [
      column('Day', 1),
      column('Gravity', 1.3),
      column('Mass / g', 1.5),
      column('Ferment / °C', 1.6),
      column('Bubbles a min', 1.7),
      column('pH', 0.9),
      column('Refractometer / %', 2),
      column('Done before', 2.6, 'start'),
    ],
    rows: moments.map(({ timeH, gravityAt20C, read }) => [
      numberWords(timeH / 24, 1),
      cell(gravityAt20C, 4),
      cell(read.massG, 1),
      cell(read.temperatureC, 1),
      cell(read.bubblesPerMin, 0),
      cell(read.ph, 1),
      cell(read.refractometerPercent, 1),
      read.treatments.length === 0 ? '–' : read.treatments.join(', '),
    ]),
  };
}

function daysTable({ days, band }: FermentStudy): DocumentTable {
  return {
    kind: 'table',
    caption: `How warm it was (°C), and for how long outside ${numberWords(band.lowC, 1)} to ${numberWords(band.highC, 1)} °C`,
    columns: [
      column('Day', 1),
      column('Lowest', 1.3),
      column('Mean', 1.3),
      column('Highest', 1.3),
      column('Heard / h', 1.4),
      column('Below / h', 1.4),
      column('Above / h', 1.4),
    ],
    rows: days.map(({ day, tally }) => [
      String(day),
      numberWords(tally.lowC, 1),
      numberWords(tally.meanC, 1),
      numberWords(tally.highC, 1),
      numberWords(tally.heardH, 1),
      numberWords(tally.belowH, 1),
      numberWords(tally.aboveH, 1),
    ]),
  };
}

function balanceBlocks({ balance }: FermentStudy): readonly Block[] {
  if (balance === null) {
    return [
      {
        kind: 'paragraph',
        text: 'How much of the sugar became ethanol can’t be said: its sugar or its strength is not known.',
      },
    ];
  }
  const masses = massesOfFerment(balance);
  const drawing = massesFigure(masses, 'Mass / g');
  return [
    {
      kind: 'table',
      caption: 'How much sugar became ethanol (±: k = 2)',
      columns: [column('', 3, 'start'), column('Mass', 3)],
      rows: [
        ...masses.map(({ name, massG }) => [name, measuredWords(massG, 'g')]),
        ['Yield of the fermentation', measuredWords(balance.yieldPercent, '%')],
      ],
    },
    ...(drawing === null
      ? []
      : [
          {
            kind: 'figure',
            drawing,
            caption:
              'From sugar to ethanol; whiskers: k = 2. Ethanol and gas together come from the sugar that fermented.',
          } as const,
        ]),
  ];
}

const method: readonly Block[] = [
  { kind: 'heading', level: 2, text: 'Method and uncertainties' },
  {
    kind: 'list',
    ordered: false,
    items: [
      'Judgement: many possible ferments are weighed against all readings; intervals hold nine times in ten. “Finished” needs two steady days near the end that is expected.',
      'Gravities are brought to 20 °C; extract by the cubic for the sugar scale, ethanol by Balling’s masses.',
      'Sugar: as stated, or else the extract of the first gravity less what of it is no sugar. Ethanol at most: Gay-Lussac’s equation.',
      'Volumes are taken to be known within 2 % (k = 1); common practice, no source. Uncertainties: JCGM 100, ± expanded with k = 2.',
      'Warmth: means of each minute in which the probe was heard.',
    ],
  },
  { kind: 'heading', level: 2, text: 'Sources' },
  {
    kind: 'list',
    ordered: true,
    items: [
      'Cutaia, Reid, Speers, J. Inst. Brew. 115 (2009) 318. (Balling’s formula.)',
      'Ferreira, Am. J. Enol. Vitic. 10 (1959) 1. (Warmth.)',
      'L. Pasteur, Annales de chimie et de physique, 3rd series, 58 (1860) 323. (Yield.)',
      'OIML R 22: International alcoholometric tables (1975). (Density, strength.)',
      'JCGM 100: Guide to the expression of uncertainty in measurement (2008).',
    ],
  },
];
