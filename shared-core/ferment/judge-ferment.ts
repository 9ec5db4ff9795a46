import { worded } from '../wording/index.ts';
import { concludeFerment, type FermentConclusion } from './conclude-ferment.ts';
import type {
  FermentFacts,
  FermentReading,
  FermentVerdict,
  NinetyInterval,
} from './ferment-log.ts';
import { whyFerment } from './ferment-words.ts';
import { type FermentBelief, followFerment } from './follow-ferment.ts';
import { gatherEvidence } from './gather-evidence.ts';

/**
 * Judges a ferment at its last reading: how strong, in which state and why, where it will end, and when by its log alone.
 * Many possible ferments are weighed against the readings (particle filter); what is said is what most of the weight says.
 *
 * @param readings in time order
 * @param facts volume [mL] > 0 and, where known, sugar [g] > 0
 * @returns the verdict with 90 % intervals; the same log gives the same bits
 *
 * Source: saturating curves `du/dt = −k u^n` with a wandering k; check: `scripts/ferments.ts`.
 * @example
 * const at = (timeH, gravity) => ({ timeH, gravity, massG: null, temperatureC: null, bubblesPerMin: null, isDegassed: false });
 * judgeFerment([at(0, 1.06), at(12, 1.06)], { volumeMl: 1000, sugarG: null }).state // => "not-started"
 */
export function judgeFerment(
  readings: readonly FermentReading[],
  facts: FermentFacts,
): FermentVerdict {
  let belief: FermentBelief | null = null;
  for (const followed of followFerment(gatherEvidence(readings), facts)) belief = followed;
  return verdictOf(
    belief && { belief, concluded: concludeFerment(belief, facts) },
    readings,
    facts,
  );
}

/**
 * The verdict by what was concluded from the last belief, for whoever follows a ferment themselves. Method: {@link concludeFerment}.
 *
 * @param last the last belief with what was concluded from it; null where nothing was read
 * @param readings those that were followed, in time order
 * @param facts volume [mL] > 0 and, where known, sugar [g] > 0
 *
 * Source: see {@link judgeFerment}.
 * @example
 * verdictOf(null, [], { volumeMl: 1000, sugarG: null }).state // => "not-started"
 */
export function verdictOf(
  last: { readonly belief: FermentBelief; readonly concluded: FermentConclusion } | null,
  readings: readonly FermentReading[],
  facts: FermentFacts,
): FermentVerdict {
  if (last === null) {
    return {
      state: 'not-started',
      because: worded('Nothing was read yet.'),
      strengthAbv: null,
      expectedEndGravity: null,
      finishH: null,
      originalGravity: null,
      donePercent: null,
      problems: [],
    };
  }
  const { belief, concluded } = last;
  return {
    state: concluded.state,
    because: whyFerment(concluded, belief),
    strengthAbv: rounded(atLeast(concluded.strengthAbv, 0), 2),
    expectedEndGravity: hasScale(readings, facts) ? rounded(concluded.endGravity, 4) : null,
    finishH: concluded.doneH === null ? null : rounded(asTheLogCounts(concluded.doneH, belief), 0),
    originalGravity: readings.some(({ gravity }) => gravity !== null)
      ? rounded(concluded.originalGravity, 4)
      : null,
    donePercent: rounded(concluded.donePercent, 0),
    problems: [...nothingToTell(readings), ...doubtsOf(concluded, belief)],
  };
}

/** Where gravity or sugar was told, the end can be told too. */
function hasScale(readings: readonly FermentReading[], facts: FermentFacts): boolean {
  return facts.sugarG !== null || readings.some(({ gravity }) => gravity !== null);
}

/** The belief counts from the log's beginning; people count as the log does. */
function asTheLogCounts(doneH: NinetyInterval, belief: FermentBelief): NinetyInterval {
  const byH = (belief.evidence.at(-1)?.timeH ?? belief.timeH) - belief.timeH;
  return { low: doneH.low + byH, value: doneH.value + byH, high: doneH.high + byH };
}

function atLeast({ low, value, high }: NinetyInterval, least: number): NinetyInterval {
  return {
    low: Math.max(least, low),
    value: Math.max(least, value),
    high: Math.max(least, high),
  };
}

function rounded({ low, value, high }: NinetyInterval, digits: number): NinetyInterval {
  const to = (number: number) => Number(number.toFixed(digits));
  return { low: to(low), value: to(value), high: to(high) };
}

function nothingToTell(readings: readonly FermentReading[]): readonly string[] {
  const tells = readings.some(
    ({ gravity, massG, bubblesPerMin }) =>
      gravity !== null || massG !== null || bubblesPerMin !== null,
  );
  return tells
    ? []
    : [
        worded(
          'Temperatures alone tell nothing of a ferment: add gravity, mass or bubbles a minute.',
        ),
      ];
}

/** Readings that what came after speaks against. */
function doubtsOf(
  { originalGravity }: FermentConclusion,
  { evidence, gravityDoubts }: FermentBelief,
): readonly string[] {
  const first = evidence[0]?.gravity ?? null;
  const isFirstDoubted =
    first !== null &&
    (first.value < originalGravity.low - 3 * first.uncertainty ||
      first.value > originalGravity.high + 3 * first.uncertainty);
  const doubts = gravityDoubts.filter(({ probability }) => probability > 0.8);
  return [
    ...(isFirstDoubted && first !== null
      ? [
          worded(
            'The first gravity, {value}, does not fit what came after and is not believed: was it read before the liquid was mixed, or had it begun to ferment?',
            { value: first.value.toFixed(3) },
          ),
        ]
      : []),
    ...doubts.map(({ evidence: { gravity, timeH } }) =>
      worded(
        'The gravity {value} after {timeH} h does not fit the others and is hardly counted: read it again.',
        { value: gravity?.value.toFixed(3) ?? '', timeH: timeH.toFixed(0) },
      ),
    ),
  ];
}
