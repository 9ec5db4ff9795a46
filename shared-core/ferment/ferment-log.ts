/** What was read of a ferment at one moment; null where that was not read. */
export interface FermentReading {
  /** Hours since the yeast went in, or since the first reading. */
  readonly timeH: number;
  /** Relative density 20/20, corrected for temperature. */
  readonly gravity: number | null;
  /** Mass of vessel and ferment, with the same things on the balance each time [g]. */
  readonly massG: number | null;
  readonly temperatureC: number | null;
  readonly bubblesPerMin: number | null;
  /** The gas was shaken or stirred out before this reading. */
  readonly isDegassed: boolean;
}

/** What is known of a ferment beside its log. */
export interface FermentFacts {
  /** Volume of the ferment [mL]. */
  readonly volumeMl: number;
  /** Sugar that it began with in all [g]; null where that is not known. */
  readonly sugarG: number | null;
  /** Whether fruit or juice is in it, which leaves some that yeast can't use; absent where nobody said. */
  readonly isFromFruit?: boolean;
}

/** A best value with the ends of its 90 % interval, all in one unit. */
export interface NinetyInterval {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

export const fermentStates = ['not-started', 'working', 'slow', 'stuck', 'finished'] as const;
export type FermentState = (typeof fermentStates)[number];

/** What is said of a ferment at its last reading. */
export interface FermentVerdict {
  readonly state: FermentState;
  /** Why, in one or two sentences with numbers. */
  readonly because: string;
  /** Strength now [% vol]; null where nothing was read that tells it. */
  readonly strengthAbv: NinetyInterval | null;
  /** Gravity at which all sugar that yeast can use is used; null where nothing tells it. */
  readonly expectedEndGravity: NinetyInterval | null;
  /** When the gravity comes, or came, within 0.002 of its end [h]; null where it has not begun or stands still above it. */
  readonly finishH: NinetyInterval | null;
  /** Gravity before anything fermented; null where no gravity was read. */
  readonly originalGravity: NinetyInterval | null;
  /** How much of what can ferment has fermented [%]. */
  readonly donePercent: NinetyInterval | null;
  /** What of the readings was doubted, in sentences. */
  readonly problems: readonly string[];
}
