import type { Balance } from '../bookkeeping/index.ts';
import { stageLabels } from '../snapshot/index.ts';
import type { DocumentTable } from './document.ts';
import { clockWords, intervalWords, measuredWords } from './measured-words.ts';
import type { RunStudy } from './study-run.ts';

const column = (title: string, width: number, align: 'start' | 'end' = 'start') => ({
  title,
  width,
  align,
});

/** Stages with their times and the tool's reasons. */
export function stagesTable({ verdicts, endS }: RunStudy): DocumentTable {
  return {
    kind: 'table',
    caption: 'Stages, and why each was called',
    columns: [
      column('Stage', 3),
      column('From', 1.2, 'end'),
      column('To', 1.2, 'end'),
      column('Because', 8),
    ],
    rows: verdicts.stages.map(({ stage, fromS, toS, because }) => [
      stageLabels[stage],
      clockWords(fromS),
      clockWords(toS ?? endS),
      because,
    ]),
  };
}

/** Alarms raised; null when there were none. */
export function alarmsTable({ verdicts }: RunStudy): DocumentTable | null {
  if (verdicts.alarms.length === 0) return null;
  return {
    kind: 'table',
    caption: 'Calls for an act',
    columns: [
      column('Call', 2.4),
      column('Raised', 1.2, 'end'),
      column('Answered', 1.4, 'end'),
      column('Because', 8),
    ],
    rows: verdicts.alarms.map(({ alarm, raisedS, acknowledgedS, because }) => [
      alarm.replaceAll('-', ' '),
      clockWords(raisedS),
      acknowledgedS === null ? 'no' : clockWords(acknowledgedS),
      because,
    ]),
  };
}

/** Cuts as booked; null without any. */
export function cutsTable({ books }: RunStudy): DocumentTable | null {
  if (books.cuts.length === 0) return null;
  const sources = {
    measured: 'measured',
    'head-temperature': 'head temp.',
    unknown: '–',
  } as const;
  return {
    kind: 'table',
    caption: 'Cuts (±: k = 2; strength: 95 % interval)',
    columns: [
      column('Cut', 0.7),
      column('From', 1.2, 'end'),
      column('To', 1.2, 'end'),
      column('Volume at 20 °C', 2.6, 'end'),
      column('Mass', 2.6, 'end'),
      column('Strength', 2.6, 'end'),
      column('Ethanol', 2.6, 'end'),
      column('Strength from', 1.8),
    ],
    rows: books.cuts.map(({ number, fromS, toS, booked, strengthFrom }) => [
      String(number),
      clockWords(fromS),
      clockWords(toS),
      booked === null ? 'not measured' : measuredWords(booked.volumeMl, 'mL'),
      booked === null ? '–' : measuredWords(booked.massG, 'g'),
      booked === null ? '–' : intervalWords(booked.strengthAbv, '% vol'),
      booked === null ? '–' : measuredWords(booked.ethanolG, 'g'),
      sources[strengthFrom],
    ]),
  };
}

/** Both balances side by side; null without booked cuts. */
export function balanceTable({ books }: RunStudy): DocumentTable | null {
  if (books.balance === null) return null;
  const { total, ethanol } = books.balance;
  const rows: readonly (readonly [string, (balance: Balance) => string])[] = [
    ['Charged', ({ inG }) => measuredWords(inG, 'g')],
    ['In the cuts', ({ cutsG }) => measuredWords(cutsG, 'g')],
    [
      'Residue',
      ({ residueG }) => (residueG === null ? 'not measured' : measuredWords(residueG, 'g')),
    ],
    ['Hold-up', ({ holdUpG }) => (holdUpG === null ? 'not measured' : measuredWords(holdUpG, 'g'))],
    ['Missing', ({ missingG }) => (missingG === null ? '–' : measuredWords(missingG, 'g'))],
    ['Recovery', ({ recoveryPercent }) => measuredWords(recoveryPercent, '%')],
    [
      'Closure',
      ({ closurePercent }) => (closurePercent === null ? '–' : measuredWords(closurePercent, '%')),
    ],
    [
      'Closes within k = 2',
      ({ closes }) => (closes === null ? 'cannot be judged' : closes ? 'yes' : 'no'),
    ],
  ];
  return {
    kind: 'table',
    caption: 'Balance (±: k = 2)',
    columns: [column('', 3), column('All liquid', 3, 'end'), column('Ethanol', 3, 'end')],
    rows: rows.map(([name, words]) => [name, words(total), words(ethanol)]),
  };
}

/** What the uncertainty of the ethanol recovery is made of; null without booked cuts. */
export function recoveryBudgetTable({ books }: RunStudy): DocumentTable | null {
  if (books.balance === null) return null;
  const { lines } = books.balance.ethanol.recoveryPercent.budget;
  return {
    kind: 'table',
    caption: 'Where the uncertainty of the ethanol recovery comes from',
    columns: [
      column('Quantity', 3),
      column('u of the quantity / g', 2.4, 'end'),
      column('u of the recovery / %', 2.4, 'end'),
      column('Share', 1.2, 'end'),
    ],
    rows: lines.map(({ name, inputStandardUncertainty, standardUncertainty, share }) => [
      name,
      inputStandardUncertainty.toPrecision(2),
      standardUncertainty.toPrecision(2),
      `${(100 * share).toFixed(0)} %`,
    ]),
  };
}

/** What was set before the run. */
export function settingsTable({ settings, startedAtIso, endS, runId }: RunStudy): DocumentTable {
  const { charge, pressure, probe, rig } = settings;
  const sources = {
    barometer: 'barometer',
    altitude: 'altitude, ISO 2533',
    channel: 'measured during the run',
  } as const;
  return {
    kind: 'table',
    caption: 'Set before the run',
    columns: [column('', 3), column('', 7)],
    rows: [
      ['Run', runId],
      [
        'Began',
        startedAtIso === '' ? 'not recorded' : `${startedAtIso.slice(0, 16).replace('T', ' ')} UTC`,
      ],
      ['Lasted', clockWords(endS)],
      [
        'Charge',
        `${charge.volumeMl} mL, ${measuredWords({ value: charge.strengthAbv, standardUncertainty: charge.standardUncertaintyAbv }, '% vol')}`,
      ],
      [
        'Air pressure',
        `${measuredWords({ value: pressure.pressureKPa, standardUncertainty: pressure.standardUncertaintyKPa }, 'kPa')}, from ${sources[pressure.source]}`,
      ],
      [
        'Head probe',
        `u = ${probe.standardUncertaintyK} K, t90 = ${probe.lagT90S} s, T = ${probe.offsetK} K + ${probe.gain} × reading`,
      ],
      ['Rig', rig.description === '' ? 'not described' : rig.description],
      ['Least strength wanted', `${settings.leastStrengthAbv} % vol`],
    ],
  };
}
