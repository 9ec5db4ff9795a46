/** What the other layers use of shared-core; scripts/check-faces.ts keeps it to that. */
export {
  alcoholByVolume,
  densityKgPerM3,
  massFractionFromAlcoholByVolume,
  moleFractionFromStrength,
  strengthFromMoleFraction,
} from './alcoholometry/index.ts';
export { judgeBarometerEntry, pressureAtAltitudeKPa, stationPressure } from './atmosphere/index.ts';
export {
  type BookEntries,
  benchUncertainty,
  booksOfRun,
  cutsOfRun,
  hexoseFromSucroseGPerG,
  type Quantity,
  strengthByMark,
} from './bookkeeping/index.ts';
export {
  isVolumeTable,
  type RunByVolume,
  runByVolume,
  volumeReadings,
} from './by-volume/index.ts';
export {
  type Caution,
  cautionGroups,
  cautionOf,
  cautionPlaces,
  cautionsAt,
  cautionWords,
  commonPractice,
  type KnownCaution,
} from './cautions/index.ts';
export {
  createBatchSimulation,
  createProbeSignal,
  equilibriumCurve,
  pearFermentSetup,
  simulateBatch,
  teachingRigs,
} from './column/index.ts';
export {
  answeredSchema,
  contractLimits,
  type EventBody,
  type EventName,
  events,
  type KeptWarm,
  type LessonScript,
  type PortInfo,
  type ProbeSource,
  type ProbeStatus,
  problemToSend,
  type RecordedChange,
  type RequestAnswer,
  type RequestBody,
  type RequestName,
  type RunSummary,
  recordedChangeSchema,
  requests,
  runSummarySchema,
  type Service,
  type ServiceProblem,
  type SetUp,
  setUpSchema,
  type WarmthReport,
  wire,
} from './contract/index.ts';
export {
  type ColumnMapping,
  type CsvDialect,
  type CsvFormat,
  csvDialects,
  detectEncoding,
  explainCsvProblem,
  loggerSilenceS,
  lookAtCsv,
  parseCsv,
  type ReadCsv,
  readReadingsCsv,
  readReadingsCsvInSteps,
  writeCsvRow,
  writeMarkCell,
  writeReadingsCsv,
} from './csv/index.ts';
export {
  boilingDiagram,
  collectedAtMl,
  collectedCourse,
  plateDiagram,
  type StillMoment,
  stillMomentAt,
} from './diagram/index.ts';
export {
  azeotrope,
  azeotropeSlopeKPerKPa,
  bubblePoint,
  dewPoint,
  headVapour,
  headVapourTable,
  saturationPressureKPa,
} from './equilibrium/index.ts';
export { exerciseLevels } from './exercises/index.ts';
export {
  distillingAdvice,
  type FermentPlan,
  type FermentVerdict,
  factsOfFerment,
  fermentTable,
  frothRoomPercent,
  fruitSugars,
  gravityAt20C,
  judgeFerment,
  leastUsefulStrengthAbv,
  originOfFerment,
  planFerment,
  readingsOfFerment,
  standingEntries,
  sugarToWeighG,
} from './ferment/index.ts';
export {
  checkMoment,
  type FermentRead,
  fermentIdSchema,
  fermentReadSchema,
  type KeptFerment,
  type StatedFerment,
  statedFermentSchema,
} from './ferment-log/index.ts';
export {
  createWarmthWatch,
  gatherSpans,
  tallyWarmth,
  usualWarmthBand,
  warmthAlarmTexts,
  warmthBandSchema,
  warmthSpanSchema,
} from './ferment-warmth/index.ts';
export {
  axisTimeWords,
  type Drawing,
  drawingToSvg,
  escapeXml,
  fermentFigure,
  mutedColours,
  niceTicks,
  plateLines,
  stageColours,
  strengthByVolumeFigure,
  temperatureByVolumeFigure,
  timeTicks,
} from './figures/index.ts';
export {
  askEveryRangeS,
  baudRates,
  compilePattern,
  countTextBytes,
  createLineReader,
  createLineSplitter,
  createPowerOnScreen,
  decodeRegisters,
  explainRejection,
  findModbusAnswer,
  type LineOutcome,
  latin1Bytes,
  meaningOf,
  modbusQuestionBytes,
  modbusSettingsSchema,
  parseScpiAnswer,
  previewPattern,
  printable,
  registersIn,
  type SerialSource,
  serialSourceSchema,
  toChannelValue,
} from './frame/index.ts';
export {
  alarmCatalogue,
  alarmTitles,
  createMonitor,
  type Monitor,
  type MonitorChange,
  modelVersion,
  mostUrgentFirst,
} from './monitor/index.ts';
export {
  type InstrumentGains,
  instrumentGains,
  type PlanRequest,
  planCoverage,
  planRun,
  type RunPlan,
  rigAsKnown,
} from './planning/index.ts';
export {
  correctionAtPlateauK,
  correctionFrom,
  platinumTemperatureC,
  pressureFromSteam,
  sensorStandardUncertaintyK,
  sensorToleranceK,
  settledReading,
  steamPoint,
} from './probe/index.ts';
export { createRandom } from './random/index.ts';
export {
  type Block,
  bookTables,
  cutsByVolumeTable,
  type DocumentTable,
  distillationKind,
  fermentKind,
  fermentSentence,
  fromFermentFigure,
  type PrintedDocument,
  proofMeaning,
  proofSightWords,
  type RunKind,
} from './report/index.ts';
export {
  assertNever,
  fail,
  OutOfRangeError,
  parseJson,
  type Result,
  succeed,
} from './result/index.ts';
export {
  channelSchema,
  chargeDoubtMl,
  correctedRun,
  defaultRunSettings,
  heatOffForGoodS,
  isBookMark,
  knownChannels,
  linkChangeSchema,
  liquidRanges,
  type Mark,
  type MarkBody,
  markBodySchema,
  mostBurnedMl,
  type NumberRange,
  type ProofMark,
  proofSights,
  type Reading,
  type RunInput,
  type RunSettings,
  readingSchema,
  readSettingsFile,
  settingRanges,
  standingMarks,
  trialWords,
  writeSettingsFile,
} from './run/index.ts';
export {
  checkedLine,
  checksumOfLine,
  createLogScanner,
  type DamagedStretch,
  encodeRecord,
  firstPreviousChecksum,
  inputsOfRecord,
  type LogBody,
  type LogHeader,
  type LogRecord,
  logHeaderSchema,
  packReading,
  runLogVersion,
  type ScannedItem,
  unpackReading,
} from './run-log/index.ts';
export {
  appendToSeries,
  type DrawnPoint,
  emptySeries,
  indexAtTime,
  pointAt,
  pointsGoingOn,
  reduceToWidth,
  type Series,
  type SeriesPoint,
} from './series/index.ts';
export {
  type Alarm,
  type AlarmView,
  type PlateauBand,
  type Snapshot,
  textsInSnapshot,
  type Verdicts,
} from './snapshot/index.ts';
export { type Stage, type StageSpan, stageLabels, stages } from './stages/index.ts';
export {
  type FermentStudy,
  originOf,
  plateauBandK,
  plateauOfRun,
  processedRows,
  processingStepS,
  type RunStudy,
  runKind,
  studyFerment,
  studyRun,
} from './study/index.ts';
export { type Estimate, standardFromNinety } from './uncertainty/index.ts';
export {
  clockWords,
  counted,
  inDecimals,
  keepUnits,
  measuredWords,
  saidWords,
} from './wording/index.ts';

// Sentences in the reader's language, moments in the reader's zone.

export { type Language, language, languages, offsetWords, setLanguage } from './wording/index.ts';

// What is said, told, and sent along with what is told.

export { asGiven, learnWording, say, sayParts, told, worded, wordingOf } from './wording/index.ts';
