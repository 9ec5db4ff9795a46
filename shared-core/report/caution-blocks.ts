import { type CautionPlace, cautionsAt, cautionWords } from '../cautions/index.ts';
import type { Block } from './document.ts';

/** The cautions that a printed page of this kind says, under a heading. */
export function cautionBlocks(place: CautionPlace): readonly Block[] {
  return [
    { kind: 'heading', level: 2, text: 'Cautions' },
    ...cautionsAt(place).map(
      (caution) => ({ kind: 'caution', text: cautionWords(caution) }) as const,
    ),
  ];
}
