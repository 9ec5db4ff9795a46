/** Readings, marks, settings: the inputs of a run. */
export { assumedWords } from './assumed-words.ts';
export { type Channel, channelSchema, isChannel, knownChannels, measuredBy } from './channel.ts';
export { chargeDoubtMl, cylinderDoubt } from './charge-doubt.ts';
export {
  correctedRun,
  correctionSchema,
} from './correction.ts';
export { defaultRunSettings } from './default-run-settings.ts';
export type { FermentOrigin } from './ferment-origin.ts';
export { heatOffForGoodS } from './heat-off-for-good.ts';
export { type LinkChange, linkChangeSchema } from './link-change.ts';
export { liquidRanges, refractometerScales } from './liquid-mark.ts';
export {
  isBookMark,
  type Mark,
  type MarkBody,
  type MarkType,
  markBodySchema,
  markSchema,
} from './mark.ts';
export { platesWords } from './plates-words.ts';
export { mostBurnedMl, type ProofMark, type ProofSight, proofSights } from './proof-mark.ts';
export {
  type Reading,
  type ReadingQuality,
  type ReadingUnit,
  readingQualitySchema,
  readingSchema,
  readingUnitSchema,
} from './reading.ts';
export { type RunInput, runInputSchema } from './run-input.ts';
export {
  type ChargeSetting,
  chargeSettingSchema,
  firstFractionSettingSchema,
  type RigSetting,
  type RunSettings,
  rigSettingSchema,
  runSettingsSchema,
  type SteamReading,
  stopSettingSchema,
} from './run-settings.ts';
export { type NumberRange, settingRanges } from './setting-ranges.ts';
export { readSettingsFile, writeSettingsFile } from './settings-file.ts';
export { standingMarks } from './standing-marks.ts';
export { trialWords } from './trial-words.ts';
