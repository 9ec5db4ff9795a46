import { plateauFigure } from '../figures/index.ts';
import { plateauBandK, type RunStudy } from '../study/index.ts';
import { clockWords, numberWords } from '../wording/index.ts';
import { heatOffAt, leavesPlateau, shownLimitC, vapourArrives, vapourC } from './curve-facts.ts';
import { type AskedNumber, answerOf, type Exercise, exercise } from './exercise.ts';

/** The plateau, read off the enlarged curve. */
export function readPlateau(study: RunStudy): Exercise | null {
  const { plateau, settings } = study;
  const limitC = shownLimitC(study);
  const figure = plateauFigure(study, false);
  if (plateau === null || limitC === null || figure === null) return null;
  const { meanC, lowestC, highestC, span } = plateau.statistics;
  const minutes = (span.toS - span.fromS) / 60;
  return exercise({
    id: 'school-plateau',
    level: 'school',
    title: 'Read the plateau',
    question: `Below the curve is enlarged. Find its longest part at or below ${limitC.toFixed(1)} °C, with the heat on, in which the temperature changes by no more than ${plateauBandK} °C. At what temperature does it lie, and how many minutes does it last?`,
    given: [
      `Up to ${limitC.toFixed(1)} °C the vapour here holds at least ${settings.leastStrengthAbv} % vol.`,
      ...heatOffGiven(study),
    ],
    marks: 3,
    answer: answerOf([
      {
        of: 'temperature',
        value: Number(meanC.toFixed(1)),
        tolerance: Math.max(0.3, Number(((highestC - lowestC) / 2).toFixed(1))),
        unit: '°C',
        decimals: 1,
      },
      {
        of: 'length',
        value: Math.round(minutes),
        tolerance: Math.max(2, Math.ceil(minutes / 4)),
        unit: 'min',
        decimals: 0,
      },
    ]),
    working: [
      `A ruler laid along the flat part reads ${meanC.toFixed(1)} °C; the record’s mean over it is the same.`,
      `It lasts from ${clockWords(span.fromS)} to ${clockWords(span.toS)}.`,
    ],
    answerLines: 3,
    figure,
    solvedFigure: plateauFigure(study, true),
  });
}

function heatOffGiven(study: RunStudy): readonly string[] {
  const offS = heatOffAt(study);
  return offS === null ? [] : [`The heat was taken off at ${clockWords(offS)}.`];
}

/** What happens when; only what a curve shows. The little light liquid of the first fraction does not. */
export function nameMoments(study: RunStudy): Exercise | null {
  const arrives = vapourArrives(study);
  const leaves = leavesPlateau(study);
  const limitC = shownLimitC(study);
  if (arrives === null) return null;
  const moments = [
    {
      name: 'A',
      what: `the curve rises past ${vapourC} °C for good`,
      meaning: 'vapour has reached the thermometer: until then the bulb hung in air',
      ...arrives,
    },
    ...(leaves === null || limitC === null
      ? []
      : [
          {
            name: 'B',
            what: `the curve rises past ${limitC.toFixed(1)} °C for good, while the heat is on (use the enlarged curve)`,
            meaning: `the vapour has become weaker than ${study.settings.leastStrengthAbv} % vol: less and less ethanol is left in the flask`,
            ...leaves,
          },
        ]),
  ];
  return exercise({
    id: 'school-stages',
    level: 'school',
    title: 'What happened when?',
    question: `How many minutes after the beginning does this happen, and what does it mean at the still? ${moments.map(({ name, what }) => `${name}: ${what}.`).join(' ')}`,
    given: leaves === null ? [] : heatOffGiven(study),
    marks: 2 * moments.length,
    answer: answerOf(
      moments.map(
        ({ name, timeS, toleranceS }): AskedNumber => ({
          of: name,
          value: Number((timeS / 60).toFixed(1)),
          tolerance: Math.max(1, Math.ceil(toleranceS / 60)),
          unit: 'min',
          decimals: 1,
        }),
      ),
    ),
    working: moments.map(
      ({ name, timeS, meaning }) => `${name}, at ${clockWords(timeS)}: ${meaning}.`,
    ),
    answerLines: 2 + moments.length,
  });
}

/** Less is no delay: an eye and a hand need as long [min]. */
const mostMinutesInTime = 2;

/** Whether the heat came off in time. */
export function judgeHeatOff(study: RunStudy): Exercise | null {
  const { settings, plateau } = study;
  const offS = heatOffAt(study);
  const limitC = shownLimitC(study);
  if (offS === null || limitC === null || plateau === null) return null;
  const leaves = leavesPlateau(study);
  const share = settings.leastStrengthAbv;
  const common = {
    id: 'school-critique',
    level: 'school',
    title: 'What would you do better?',
    question: `The aim was distillate of at least ${share} % vol, that is a head at or below ${limitC.toFixed(1)} °C. By how many minutes was the heat taken off too late? (Write 0 if it was not.) Give the reason from the curve, and say what you would do.`,
    given: heatOffGiven(study),
    marks: 3,
    answerLines: 4,
  } as const;
  if (leaves !== null) {
    const lateMin = (offS - leaves.timeS) / 60;
    const late: AskedNumber = {
      of: 'late by',
      value: Number(lateMin.toFixed(1)),
      tolerance: Math.max(1, Math.ceil(leaves.toleranceS / 60)),
      unit: 'min',
      decimals: 1,
    };
    return exercise({
      ...common,
      answer: answerOf(
        [late],
        'Take the heat off, or change the receiver, when the curve leaves the plateau.',
      ),
      working: [
        `The curve passes ${limitC.toFixed(1)} °C for good at ${clockWords(leaves.timeS)}; the heat came off at ${clockWords(offS)}: ${numberWords(lateMin, 1)} min later.`,
        'From there on each drop is weaker than wanted and thins what is already in the receiver.',
      ],
    });
  }
  const before = study.rows.filter(({ timeS }) => timeS <= offS);
  const lastBelowS = before.findLast(({ headC }) => headC <= limitC)?.timeS ?? 0;
  const overS = offS - lastBelowS;
  const lastC = before.at(-1)?.headC;
  // A head that hovers about the limit gives no answer that an eye can read.
  if (lastC === undefined || overS > mostMinutesInTime * 60) return null;
  return exercise({
    ...common,
    answer: answerOf(
      [
        {
          of: 'late by',
          value: 0,
          tolerance: Math.max(mostMinutesInTime, Math.ceil(study.endS / 60 / 40)),
          unit: 'min',
          decimals: 0,
        },
      ],
      lastC > limitC
        ? 'That is in time: an eye and a hand need as long.'
        : 'It was not late: whoever waits gets more, at the price of strength.',
    ),
    working: inTimeWorking({ offS, lastC, limitC, lastBelowS }),
  });
}

interface InTime {
  readonly offS: number;
  readonly lastC: number;
  readonly limitC: number;
  /** When the head was last seen at or below the limit. */
  readonly lastBelowS: number;
}

/** In time is also who took the heat off while the head was just passing the limit. */
function inTimeWorking({ offS, lastC, limitC, lastBelowS }: InTime): readonly string[] {
  const [last, limit] = [`${lastC.toFixed(1)} °C`, `${limitC.toFixed(1)} °C`];
  const stood = `At ${clockWords(offS)} the head stood at ${last}`;
  return Number(lastC.toFixed(1)) > Number(limitC.toFixed(1))
    ? [
        `${stood}. It had been at ${limit} or below until ${clockWords(lastBelowS)}.`,
        'The little that came over since then is hardly weaker than wanted.',
      ]
    : [
        `${stood}, not above ${limit}.`,
        'What was left in the flask could have been distilled a little longer.',
      ];
}
