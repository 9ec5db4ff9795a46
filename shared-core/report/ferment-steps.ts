import type { Quantity } from '../bookkeeping/index.ts';
import { type BalanceStep, type Drawing, mutedColours, stepsFigure } from '../figures/index.ts';
import type { FermentBalance } from '../study/index.ts';
import { measuredWords } from '../wording/index.ts';

/** A mass on its way from the sugar, before it is drawn. */
export interface NamedMass {
  readonly name: string;
  readonly massG: Quantity;
}

const paints: readonly Pick<BalanceStep, 'colour' | 'texture'>[] = [
  { colour: mutedColours.sand, texture: 'dots' },
  { colour: mutedColours.cyan, texture: 'level' },
  { colour: mutedColours.teal, texture: 'plain' },
  { colour: mutedColours.rose, texture: 'falling' },
  { colour: mutedColours.paleGrey, texture: 'cross' },
  { colour: mutedColours.olive, texture: 'rising' },
];

/** Masses one under the other, whiskers over k = 2. */
export function massesFigure(masses: readonly NamedMass[], title: string): Drawing | null {
  return stepsFigure(
    masses.map(({ name, massG }, index) => ({
      name,
      grams: massG.value,
      low: Math.max(0, massG.value - 2 * massG.standardUncertainty),
      high: massG.value + 2 * massG.standardUncertainty,
      words: measuredWords(massG, 'g'),
      ...(paints[index % paints.length] ?? { colour: mutedColours.teal, texture: 'plain' }),
    })),
    title,
  );
}

/** From the sugar to what has become of it, in the ferment alone. */
export function massesOfFerment({
  sugarG,
  turnedG,
  mostEthanolG,
  ethanolG,
  carbonDioxideG,
}: FermentBalance): readonly NamedMass[] {
  return [
    { name: 'Sugar at first', massG: sugarG },
    { name: 'of it fermented', massG: turnedG },
    { name: 'Ethanol at most', massG: mostEthanolG },
    { name: 'Ethanol by the log', massG: ethanolG },
    { name: 'Gas with it', massG: carbonDioxideG },
  ];
}
