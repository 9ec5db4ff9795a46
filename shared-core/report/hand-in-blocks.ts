import { kindWords, type RunStudy, runKind } from '../study/index.ts';
import type { Block } from './document.ts';
import { settingNumber } from './setting-number.ts';

/** What a report that is handed in begins with: who, what for, and with what. */
export function openingBlocks(studies: readonly RunStudy[]): readonly Block[] {
  return [
    { kind: 'paragraph', text: 'Names ______________________________  Date ____________' },
    { kind: 'heading', level: 2, text: 'Aim' },
    { kind: 'paragraph', text: aimWords(studies) },
    { kind: 'heading', level: 2, text: 'Apparatus' },
    { kind: 'list', ordered: false, items: studies.map(apparatusWords) },
  ];
}

/** A spirit distilled again is no ferment: only a charge whose log was kept is known to be one. */
const liquidWords = (studies: readonly RunStudy[]) =>
  studies.every(({ settings }) => settings.ferment != null)
    ? 'a fermented liquid'
    : 'an alcoholic liquid';

function aimWords(studies: readonly RunStudy[]): string {
  const [first, ...others] = studies;
  if (first === undefined) return '';
  const { charge, leastStrengthAbv } = first.settings;
  const liquid = liquidWords(studies);
  return others.length > 0
    ? `To separate ethanol from ${liquid} in ${others.length + 1} runs, and to compare what the head temperature, the distillate and the balance of each tell.`
    : `To separate ethanol from ${settingNumber(charge.volumeMl)}\u00a0mL of ${liquid} of ${settingNumber(charge.strengthAbv)}\u00a0% vol, to follow the vapour by the temperature at the still head, and to stop where it is weaker than ${settingNumber(leastStrengthAbv)}\u00a0% vol.`;
}

function apparatusWords({ name, settings }: RunStudy): string {
  const { rig, probe } = settings;
  const described =
    rig.description === ''
      ? 'the rig was not described: name flask, column, condenser and receivers here'
      : rig.description;
  const heated = rig.heatW === null ? '' : `; heated with ${settingNumber(rig.heatW)}\u00a0W`;
  const kind = runKind(settings) === 'not described' ? '' : `; ${kindWords(settings)}`;
  return `${name}: ${described}${kind}${heated}; thermometer at the still head, standard uncertainty ${settingNumber(twoFigures(probe.standardUncertaintyK))}\u00a0K.`;
}

/** JCGM 100, 7.2.6. */
const twoFigures = (uncertainty: number) => Number(uncertainty.toPrecision(2));

const isHeatOff = (input: RunStudy['inputs'][number]) =>
  input.kind === 'mark' && input.mark.type === 'heat-off';

/** What is left for whoever hands the report in to write: prompts that this run's data can answer. */
export function discussionBlocks(studies: readonly RunStudy[]): readonly Block[] {
  const some = (has: (study: RunStudy) => boolean) => studies.some(has);
  const items = [
    ...(some(({ plateau }) => plateau !== null)
      ? [
          'How far is the plateau from the azeotrope at this air pressure? What of the difference do the thermometer and the pressure explain?',
        ]
      : some(({ byVolume }) => byVolume?.basis !== 'table')
        ? ['Why did the head show no plateau? What would have to change for one?']
        : []),
    ...(some(({ byVolume }) => byVolume?.basis === 'table')
      ? [
          'At which volume would you have changed the receiver? What would another millilitre have added, and how strong?',
        ]
      : []),
    ...(some(({ books }) => books.balance?.ethanol.closurePercent != null)
      ? ['Does the balance of ethanol close within its uncertainty? Where may the rest be?']
      : [
          'The balance of ethanol can’t be closed with what was measured. What is missing, and how would you measure it?',
        ]),
    ...(some(({ books }) => books.balance !== null)
      ? [
          'Which reading makes the recovery most uncertain? What would a better instrument for it change?',
        ]
      : []),
    ...(some(({ plates }) => plates !== null)
      ? [
          'Compare the stages counted with those that the rig should have. What does the reflux during the run do to the number?',
        ]
      : []),
    ...(some(({ inputs }) => inputs.some(isHeatOff))
      ? [
          'Was the heat taken off at the right moment? Argue with the strength still wanted and the ethanol left in the pot.',
        ]
      : []),
    ...(studies.length > 1
      ? ['By more than their uncertainties: in what do the runs differ, and why?']
      : []),
  ];
  return [
    { kind: 'heading', level: 2, text: 'Discussion' },
    { kind: 'list', ordered: true, items },
  ];
}

/** Whose numbers stand behind those of the report; the measured sets are those of test/reference/vle, whose heads cite them. */
export const sourceBlocks: readonly Block[] = [
  { kind: 'heading', level: 2, text: 'Sources' },
  {
    kind: 'list',
    ordered: true,
    items: [
      'J. S. Carey, W. K. Lewis: Studies in distillation. Liquid–vapor equilibria of ethyl alcohol–water mixtures. Ind. Eng. Chem. 24 (1932) 882. (Equilibrium, azeotrope.)',
      'R. C. Pemberton, C. J. Mash: Thermodynamic properties of aqueous non-electrolyte mixtures II. J. Chem. Thermodyn. 10 (1978) 867. (Equilibrium at other temperatures.)',
      'N. Kamihama et al., J. Chem. Eng. Data 57 (2012) 339; E. C. Voutsas et al., Fluid Phase Equilib. 308 (2011) 135. (Equilibrium at other pressures, to check the model.)',
      'H. Renon, J. M. Prausnitz: Local compositions in thermodynamic excess functions for liquid mixtures. AIChE J. 14 (1968) 135. (The equation of the activity coefficients.)',
      'OIML R 22: International alcoholometric tables (1975). (Density, strength, temperature.)',
      'JCGM 100: Guide to the expression of uncertainty in measurement (2008).',
    ],
  },
];

/** Figures and tables with their numbers, in the order in which they stand. */
export function numbered(blocks: readonly Block[]): readonly Block[] {
  const counts = { figure: 0, table: 0 };
  const names = { figure: 'Figure', table: 'Table' } as const;
  return blocks.map((block) => {
    if (block.kind !== 'figure' && block.kind !== 'table') return block;
    counts[block.kind] += 1;
    return { ...block, caption: `${names[block.kind]} ${counts[block.kind]}. ${block.caption}` };
  });
}
