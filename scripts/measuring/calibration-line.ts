/** Where truths fell in the intervals told of them, run by run: what one run tells hangs together. */
export type PlacesByRun = readonly (readonly number[])[];

const bins = 10;
const bars = [...'▁▂▃▄▅▆▇█'];
/** A bar is full where twice as many truths fall in a tenth as belong there. */
const fullAt = 2;
/** What is less than this off is not worth mending: a twentieth of all truths. */
const worthMending = 0.05;
const surelySds = 2;
/** The spread of fewer runs says nothing of how far chance carries them. */
const leastRuns = 10;

/** One histogram of ten bins and what it shows: too wide, too narrow, biased, or neither. */
export function calibrationLine(name: string, places: PlacesByRun): string {
  const all = places.flat();
  if (all.length === 0) return `${name}: nothing told`;
  const shares = tenths(all);
  const drawn = shares.map((share) => {
    const level = Math.floor((share * bins * bars.length) / fullAt);
    return bars[Math.min(bars.length - 1, level)];
  });
  const figures = shares.map((share) => (100 * share).toFixed(0)).join(' ');
  return `${name}: ${drawn.join('')}  ${figures} %  n ${all.length} of ${runsOf(places)} runs: ${calibrationVerdict(places)}`;
}

function runsOf(places: PlacesByRun): number {
  return places.filter((run) => run.length > 0).length;
}

/** Share of the truths in each tenth of what was told. */
function tenths(places: readonly number[]): readonly number[] {
  const counts = Array.from({ length: bins }, () => 0);
  for (const place of places) {
    const bin = Math.min(bins - 1, Math.floor(place * bins));
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  return counts.map((count) => count / places.length);
}

/** Whether intervals were right, as far as so many runs can tell. */
export function calibrationVerdict(places: PlacesByRun): string {
  if (runsOf(places) < leastRuns) return 'too few runs to tell';
  const found: string[] = [];
  const middle = meanOverRuns(places, (place) => place);
  if (isOff(middle, 0.5)) found.push(`biased, truth ${middle.mean > 0.5 ? 'above' : 'below'}`);
  // Of right intervals the places lie half-way to the ends on the mean.
  const outward = meanOverRuns(places, (place) => Math.abs(2 * place - 1));
  if (isOff(outward, 0.5)) found.push(outward.mean > 0.5 ? 'too narrow' : 'too wide');
  return found.length === 0 ? 'as told' : found.join(', ');
}

interface MeanOverRuns {
  readonly mean: number;
  readonly standardError: number;
}

function isOff({ mean, standardError }: MeanOverRuns, expected: number): boolean {
  const off = Math.abs(mean - expected);
  return off > worthMending && off > surelySds * standardError;
}

/** A mean, and its standard error with runs as what chance draws. */
function meanOverRuns(places: PlacesByRun, of: (place: number) => number): MeanOverRuns {
  const count = places.flat().length;
  const mean = places.flat().reduce((sum, place) => sum + of(place), 0) / count;
  const squares = places.reduce(
    (sum, run) => sum + run.reduce((off, place) => off + of(place) - mean, 0) ** 2,
    0,
  );
  return { mean, standardError: Math.sqrt(squares) / count };
}
