import { type RunByVolume, volumeCutWords } from '../by-volume/index.ts';
import { strengthByVolumeFigure, temperatureByVolumeFigure } from '../figures/index.ts';
import type { RunStudy } from '../study/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { intervalWords, numberWords, worded } from '../wording/index.ts';
import type { Block, DocumentTable } from './document.ts';

const basisWords: Readonly<Record<RunByVolume['basis'], string>> = {
  table: 'as the table gives them',
  'receiver-volume': 'as the receiver was measured all along',
  'receiver-mass': 'from the balance under the receiver, by the density of what came over',
  booked: 'as written down, and as at an even heat from one volume to the next',
  'drip-rate': 'from the drip rate stated, as at an even heat',
};

/** The run against the volume of distillate: the figure of the textbook, the strength, the cuts. */
export function volumeBlocks(study: RunStudy): readonly Block[] {
  const { byVolume } = study;
  const temperature = temperatureByVolumeFigure(study, { expected: true });
  if (byVolume === null || temperature === null) return [];
  const strength = strengthByVolumeFigure(study);
  const { aboveRayleighK, doubt, basis } = byVolume;
  return [
    {
      kind: 'figure',
      drawing: temperature,
      caption: `Head temperature against the distillate collected, ${basisWords[basis]}. Dashed: what the charge would give in a simple still${byVolume.rectified === null ? '' : ', and in the column described at the reflux entered'}.`,
    },
    ...(strength === null
      ? []
      : [
          {
            kind: 'figure',
            drawing: strength,
            caption: `Strength of the vapour against the distillate collected${basis === 'table' ? '' : ', with what the monitor learned of the probe during the run'}. Shaded: 95 % interval.`,
          } as const,
        ]),
    cutsByVolumeTable(byVolume),
    ...(aboveRayleighK === null
      ? []
      : [
          {
            kind: 'paragraph',
            text: besideRayleighWords(aboveRayleighK),
          } as const,
        ]),
    // Of a table it stands among the problems of the run.
    ...(doubt === null || basis === 'table' ? [] : [{ kind: 'paragraph', text: doubt } as const]),
  ];
}

function besideRayleighWords({
  mean,
  greatest,
}: NonNullable<RunByVolume['aboveRayleighK']>): string {
  const size = Math.abs(mean);
  if (size < 1) {
    return `The head was within ${numberWords(Math.abs(greatest), 1)} K of what a simple still of this charge would show.`;
  }
  const meaning = mean < 0 ? 'cooler, so its vapour was stronger,' : 'hotter';
  return `On average the head was ${numberWords(size, 1)} K ${meaning} than a simple still of this charge would show; at most they differ by ${numberWords(Math.abs(greatest), 1)} K.`;
}

/**
 * The cuts by the temperature and what is in all of them together, the same in the report and in the window.
 *
 * @param byVolume verdict and all that was collected, of `runByVolume`
 * @returns table in words with units: volumes [mL], mean strengths [% vol at 20 °C] as 95 % intervals; without rows where no strength is known
 *
 * Source: see `meanStrength`.
 * @example
 * cutsByVolumeTable({ verdict: { cuts: [] }, collected: null }).rows // => []
 */
export function cutsByVolumeTable({
  verdict,
  collected,
}: {
  readonly verdict: Pick<RunByVolume['verdict'], 'cuts'>;
  readonly collected: RunByVolume['collected'];
}): DocumentTable {
  const row = (name: string, fromMl: number, toMl: number, abv: Estimate) => [
    name,
    `${numberWords(fromMl, 1)}\u00a0mL`,
    `${numberWords(toMl, 1)}\u00a0mL`,
    intervalWords(abv, '% vol'),
  ];
  return {
    kind: 'table',
    caption: worded('Cuts by the temperature (strength at 20 °C: 95 % interval)'),
    columns: [
      { title: worded('Part'), align: 'start', width: 4 },
      { title: worded('From'), align: 'end', width: 2 },
      { title: worded('To'), align: 'end', width: 2 },
      { title: worded('Mean strength'), align: 'end', width: 3 },
    ],
    rows: [
      ...verdict.cuts.map(({ cut, fromMl, toMl, meanAbv }) =>
        row(volumeCutWords[cut], fromMl, toMl, meanAbv),
      ),
      ...(collected === null
        ? []
        : [row(worded('All together'), 0, collected.volumeMl, collected.abv)]),
    ],
  };
}
