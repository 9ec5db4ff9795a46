/** Heat capacity and heat loss of a piece of glassware. */
export interface GlassPart {
  /** Heat capacity of the glass and what fills it [J/K], 1 … 5000. */
  readonly heatCapacityJPerK: number;
  /** Heat lost to the room per kelvin above it [W/K], 0 … 5. */
  readonly lossWPerK: number;
}

/** The column between pot and still head. */
export interface ColumnPart extends GlassPart {
  /** Liquid that stays on the packing when it has drained [mL], 0.1 … 500. */
  readonly holdUpMl: number;
  /** Time in which liquid above that drains to the next plate (63 %) [s], 1 … 120. */
  readonly drainS: number;
}

/** The still head, where the thermometer hangs. */
export interface HeadPart extends GlassPart {
  /** Heat passed from vapour to the colder head wall per kelvin [W/K], 0.1 … 50. */
  readonly filmWPerK: number;
  /** Gas space that vapour must fill before it bathes the bulb [mL], 1 … 1000. */
  readonly vapourSpaceMl: number;
  /** Time in which the vapour in the head collapses once its supply ends (63 %) [s], 1 … 120. */
  readonly recedeS: number;
}

/** The condenser and the way down to the receiver. */
export interface CondenserPart {
  /** Temperature of the distillate that leaves it [°C], 0 … 60. */
  readonly distillateTemperatureC: number;
  /** Time the condensate takes to run down (63 %) [s], 1 … 120. */
  readonly drainS: number;
}

/** The bulb of the head thermometer: time to 90 % of a step. */
export interface BulbPart {
  /** In condensing vapour [s], 0.1 … 300. */
  readonly wetT90S: number;
  /** In still gas, much slower [s], 0.1 … 1000. */
  readonly dryT90S: number;
}

/** What heats the flask. */
export interface HeaterPart {
  /** Heat that reaches the flask at the usual setting [W], 1 … 5000. */
  readonly powerW: number;
  /** Time in which the heater follows its setting (63 %) [s], 0.1 … 600. */
  readonly timeConstantS: number;
}

/** One set of glassware, as the simulator sees it. */
export interface Rig {
  readonly description: string;
  /** Theoretical plates of the column, the pot not counted; 0 … 40, fractions allowed. */
  readonly plates: number;
  readonly flask: GlassPart;
  readonly column: ColumnPart;
  readonly head: HeadPart;
  readonly condenser: CondenserPart;
  readonly bulb: BulbPart;
  readonly heater: HeaterPart;
  /** Share of the condensate led back to the top plate, R/(R + 1); 0 … 1, 1 = total reflux. */
  readonly returnedFraction: number;
}
