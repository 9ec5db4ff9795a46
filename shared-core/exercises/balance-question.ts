import type { BookedLiquid, Quantity } from '../bookkeeping/index.ts';
import type { RunStudy } from '../study/index.ts';
import { coverageFactor95 } from '../uncertainty/index.ts';
import { decimalsFor, measuredWords } from '../wording/index.ts';
import { answerOf, type Exercise, exercise, shown } from './exercise.ts';

/** A liquid as the sheet prints it: both with their expanded uncertainty (k = 2). */
interface PrintedLiquid {
  readonly name: string;
  readonly given: string;
  readonly massG: Expanded;
  readonly massPercent: Expanded;
  readonly ethanolG: number;
}

interface Expanded {
  readonly value: number;
  readonly expanded: number;
}

/** Ethanol charged and collected, the recovery and its uncertainty; the closure where the residue was measured. */
export function balanceEthanol({ books, settings }: RunStudy): Exercise | null {
  if (books.balance === null) return null;
  const charge = printed(books.charge);
  const cuts = books.cuts.flatMap(({ booked }) => (booked === null ? [] : [printed(booked)]));
  const residue = books.residue === null ? null : printed(books.residue);
  const holdUp = books.holdUp === null ? null : printed(books.holdUp);
  const others = [residue, holdUp].filter((liquid) => liquid !== null);
  const chargedG = shown(charge.ethanolG, 2);
  // Each term is multiplied out and only their sum is rounded, as whoever keys in the printed line does.
  const cutsG = shown(sum(cuts), 2);
  const othersG = others.map(({ ethanolG }) => shown(ethanolG, 2));
  const recovery = shown((100 * cutsG) / chargedG, 1);
  const doubts = [
    ...doubtsOf(charge, chargedG),
    ...cuts.flatMap((cut) => doubtsOf(cut, cutsG)),
  ].toSorted((a, b) => b.relative - a.relative);
  const expanded = shown(recovery * Math.hypot(...doubts.map(({ relative }) => relative)), 1);
  const missingG = shown(
    othersG.reduce((leftG, grams) => leftG - grams, chargedG - cutsG),
    1,
  );
  const isClosed = books.balance.ethanol.missingG !== null;
  const first = largestOf(doubts);
  const shared = sharedWords(books.cuts.flatMap(({ booked }) => booked ?? []));
  return exercise({
    id: 'undergraduate-balance',
    level: 'undergraduate',
    title: 'Balance the ethanol, with its uncertainty',
    question: `Work out the ethanol charged and collected in grams, the recovery, and its expanded uncertainty (k = 2, ${shared.length === 0 ? 'all readings independent' : 'taking all readings as independent'}). Which measurement would you improve first?${isClosed ? ' How many grams are missing?' : ''}`,
    given: [
      ...[charge, ...cuts, ...others].map(({ given }) => given),
      'Masses and mass fractions ± U with k = 2.',
    ],
    marks: isClosed ? 8 : 7,
    answer: answerOf(
      [
        { of: 'charged', value: chargedG, tolerance: 0.1, unit: 'g', decimals: 2 },
        { of: 'collected', value: cutsG, tolerance: 0.1, unit: 'g', decimals: 2 },
        {
          of: 'recovery',
          value: recovery,
          tolerance: Math.max(0.5, shown(20 / chargedG, 1)),
          unit: '%',
          decimals: 1,
        },
        {
          of: 'U',
          value: expanded,
          tolerance: Math.max(0.2, shown(0.2 * expanded, 1)),
          unit: '%',
          decimals: 1,
        },
        ...(isClosed
          ? [{ of: 'missing', value: missingG, tolerance: 0.2, unit: 'g', decimals: 1 }]
          : []),
      ],
      `First: ${first}.`,
    ),
    working: [
      `Charged: ${product(charge)} = ${chargedG.toFixed(2)} g ethanol.`,
      `Collected: ${cuts.map(product).join(' + ')} = ${cutsG.toFixed(2)} g. Recovery: ${recovery.toFixed(1)} %.`,
      `Relative uncertainties add as squares: U(R)/R = √Σ(U/value)², a cut’s weighted by its share of the ethanol: U = ${expanded.toFixed(1)} %. Largest part: ${first}.`,
      ...shared,
      `The tool rounds nothing on the way: ${measuredWords(books.balance.ethanol.recoveryPercent, '%')}.`,
      isClosed
        ? `Missing: ${chargedG.toFixed(2)} − ${[cutsG, ...othersG].map((grams) => grams.toFixed(2)).join(' − ')} = ${missingG.toFixed(1)} g${holdUp === null ? `, what stayed ${settings.rig.plates === 0 ? 'on the glass' : 'in the column'} among it` : ''}. ${closureWords(books.balance.ethanol.closes)}`
        : residue === null
          ? 'The residue was not measured, so closure cannot be judged: a difference always closes.'
          : `Cut ${books.unmeasuredCuts.join(', ')} was not measured, so closure cannot be judged, and the recovery is a least one.`,
    ],
    answerLines: 12,
  });
}

/** One sentence for each instrument that more than one cut was read with. */
function sharedWords(cuts: readonly BookedLiquid[]): readonly string[] {
  const instruments = new Set(cuts.flatMap(({ instrument }) => instrument?.name ?? []));
  return [...instruments].flatMap((instrument) => {
    const names = cuts.flatMap((cut) => (cut.instrument?.name === instrument ? [cut.name] : []));
    return names.length < 2
      ? []
      : [
          `The strengths of ${names.join(', ')} hang on one and the same instrument (${instrument}), so they are not quite independent: what it is off by is in all of them, adds up before it is squared, and makes U larger.`,
        ];
  });
}

/** Parts that differ by less than this share of the largest are told apart by chance alone; chosen here. */
const asLargeAs = 0.9;

function largestOf(
  doubts: readonly { readonly name: string; readonly relative: number }[],
): string {
  const least = asLargeAs * (doubts[0]?.relative ?? 0);
  return doubts
    .filter(({ relative }) => relative >= least)
    .map(({ name }) => name)
    .join(' or ');
}

function closureWords(closes: boolean | null): string {
  if (closes === null) return '';
  return closes
    ? 'Within the uncertainty the balance closes.'
    : 'The balance does not close: hold-up, evaporation or a misread value.';
}

function printed({ name, massG, ethanolMassFraction, ethanolG }: BookedLiquid): PrintedLiquid {
  const fraction: Quantity = {
    value: 100 * ethanolMassFraction.value,
    standardUncertainty:
      (50 * (ethanolMassFraction.high - ethanolMassFraction.low)) / coverageFactor95,
  };
  const mass = expandedAsPrinted(massG);
  const massPercent = expandedAsPrinted(fraction);
  return {
    name,
    given: `${name}: ${measuredWords(massG, 'g')} with a mass fraction of ethanol of ${measuredWords(fraction, '%')}.`,
    massG: mass,
    massPercent,
    ethanolG: ethanolG.value === 0 ? 0 : (mass.value * massPercent.value) / 100,
  };
}

/** The digits that `measuredWords` prints. */
function expandedAsPrinted({ value, standardUncertainty }: Quantity): Expanded {
  const decimals = decimalsFor(2 * standardUncertainty);
  return { value: shown(value, decimals), expanded: shown(2 * standardUncertainty, decimals) };
}

const sum = (liquids: readonly PrintedLiquid[]) =>
  liquids.reduce((total, { ethanolG }) => total + ethanolG, 0);

function product({ massG, massPercent }: PrintedLiquid): string {
  return `${massG.value} × ${massPercent.value}/100`;
}

/** What each reading adds to the relative uncertainty of the recovery. */
function doubtsOf({ name, massG, massPercent, ethanolG }: PrintedLiquid, ofG: number) {
  const share = ofG > 0 ? ethanolG / ofG : 0;
  const relative = ({ value, expanded }: Expanded) => (value > 0 ? (share * expanded) / value : 0);
  const liquid = name.toLowerCase();
  return [
    { name: `mass of ${liquid}`, relative: relative(massG) },
    { name: `strength of ${liquid}`, relative: relative(massPercent) },
  ];
}
