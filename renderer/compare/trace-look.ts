import { traceSigns } from '../words/index.ts';

/** How a run looks among others: dashes, a sign along the line, a letter; the colour only helps. */
export interface TraceLook {
  readonly letter: string;
  readonly dashes: string;
  readonly sign: (typeof traceSigns)[number];
  readonly colour: string;
}

export const traceLooks: readonly TraceLook[] = [
  { letter: 'P', dashes: '', sign: traceSigns[0], colour: 'var(--trace)' },
  { letter: 'Q', dashes: '12 5', sign: traceSigns[1], colour: 'var(--trace-second)' },
  { letter: 'R', dashes: '3 4', sign: traceSigns[2], colour: 'var(--fan)' },
  { letter: 'S', dashes: '14 4 3 4', sign: traceSigns[3], colour: 'var(--band)' },
];

/** At most so many runs can be told apart in one drawing. */
export const mostRuns = traceLooks.length;
