/** Ends of what a setting or an entry may be, in the unit of its name. */
export interface NumberRange {
  readonly low: number;
  readonly high: number;
}

/**
 * What people may set before a run: the schema, the fields' messages and the help say these very numbers. Pressure and
 * strengths are where the models are checked; volumes, heat and plates are round figures about teaching apparatus, no source.
 */
export const settingRanges = {
  pressureKPa: { low: 60, high: 110 },
  altitudeM: { low: -430, high: 4500 },
  chargeVolumeMl: { low: 20, high: 50_000 },
  chargeStrengthAbv: { low: 0.5, high: 60 },
  /** Standard uncertainties of the charge. */
  chargeDoubtAbv: { low: 0, high: 10 },
  chargeDoubtMl: { low: 0, high: 5000 },
  leastStrengthAbv: { low: 10, high: 96 },
  plates: { low: 0, high: 40 },
  heatW: { low: 5, high: 5000 },
  reactionTimeS: { low: 5, high: 300 },
  firstFractionMinutes: { low: 0, high: 120 },
  firstFractionMl: { low: 0, high: 5000 },
  firstFractionDrops: { low: 0, high: 5000 },
} as const satisfies Readonly<Record<string, NumberRange>>;
