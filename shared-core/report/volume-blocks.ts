import { type RunByVolume, volumeCutWords } from '../by-volume/index.ts';
import { strengthByVolumeFigure, temperatureByVolumeFigure } from '../figures/index.ts';
import type { RunStudy } from '../study/index.ts';
import { intervalWords, numberWords } from '../wording/index.ts';
import type { Block, DocumentTable } from './document.ts';

const basisWords: Readonly<Record<RunByVolume['basis'], string>> = {
  table: 'as the table gives them',
  'receiver-volume': 'as the receiver was measured all along',
  'receiver-mass': 'from the balance under the receiver, by the density of what came over',
  booked: 'as written down, evenly between one volume and the next',
  'drip-rate': 'from the drip rate stated, even all along',
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
            caption:
              'Strength of the vapour against the distillate collected. Shaded: 95 % interval.',
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

function cutsByVolumeTable({ verdict, course }: RunByVolume): DocumentTable {
  const last = course.findLast(({ collectedAbv }) => collectedAbv !== null);
  const row = (name: string, fromMl: number, toMl: number, abv: string) => [
    name,
    fromMl.toFixed(1),
    toMl.toFixed(1),
    abv,
  ];
  return {
    kind: 'table',
    caption: 'Cuts by the temperature, strength at 20 °C (95 % interval)',
    columns: [
      { title: 'Part', align: 'start', width: 4 },
      { title: 'From / mL', align: 'end', width: 2 },
      { title: 'To / mL', align: 'end', width: 2 },
      { title: 'Mean strength', align: 'end', width: 3 },
    ],
    rows: [
      ...verdict.cuts.map(({ cut, fromMl, toMl, meanAbv }) =>
        row(volumeCutWords[cut], fromMl, toMl, intervalWords(meanAbv, '% vol')),
      ),
      ...(last?.collectedAbv == null
        ? []
        : [row('All together', 0, last.volumeMl, intervalWords(last.collectedAbv, '% vol'))]),
    ],
  };
}
