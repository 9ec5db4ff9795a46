import { type Caution, cautions } from '../cautions/index.ts';
import { type Mark, type RunInput, standingMarks } from '../run/index.ts';
import type { Block } from './document.ts';
import { proofMeaning, proofSightWords } from './proof-words.ts';

/** A run's marks, those made after it included. */
interface MarkedRun {
  readonly inputs: readonly RunInput[];
  readonly lateMarks?: readonly Mark[] | undefined;
}

/** The samples burned as proof, and what had been confirmed before each was lit; nothing where none was. */
export function proofBlocks({ inputs, lateMarks = [] }: MarkedRun): readonly Block[] {
  const proofs = standingMarks([...inputs, ...lateMarks]).flatMap(({ mark }) =>
    mark.type === 'proof-burned' ? [mark] : [],
  );
  if (proofs.length === 0) return [];
  const confirmed = new Set(proofs.flatMap((proof) => proof.confirmed));
  return [
    { kind: 'heading', level: 2, text: 'Proof by burning a sample' },
    {
      kind: 'table',
      caption: 'Samples lit after the run',
      columns: [
        { title: 'From', align: 'start', width: 2 },
        { title: 'Volume', align: 'end', width: 2 },
        { title: 'It', align: 'start', width: 3 },
        { title: 'Done by', align: 'start', width: 2 },
      ],
      rows: proofs.map(({ cut, volumeMl, seen, role }) => [
        `Cut ${cut}`,
        `${volumeMl.toFixed(1)} mL`,
        proofSightWords[seen],
        role,
      ]),
    },
    { kind: 'paragraph', text: proofMeaning },
    { kind: 'paragraph', text: 'Confirmed before it was lit:' },
    { kind: 'list', ordered: false, items: [...confirmed].map(actOf) },
  ];
}

/** A record may hold a condition that this version's list has no more. */
function actOf(id: string): string {
  const known: readonly Caution[] = cautions;
  return known.find((caution) => caution.id === id)?.act ?? id;
}
