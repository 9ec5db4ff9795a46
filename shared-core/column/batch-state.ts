/** Contents of a receiver. */
export interface ReceiverState {
  /** Volume at 20 °C [mL]. */
  readonly volumeMl: number;
  readonly ethanolMol: number;
  /** Strength [% vol at 20 °C]; 0 while empty. */
  readonly strengthAbv: number;
}

/** The whole still at one moment, as nobody can see it at the bench: the truth behind the readings. */
export interface BatchState {
  readonly timeS: number;
  readonly pressureKPa: number;
  /** Heat that enters the flask [W]. */
  readonly heatW: number;
  readonly potTemperatureC: number;
  readonly potEthanolMoleFraction: number;
  readonly potStrengthAbv: number;
  /** Liquid in the pot, as volume at 20 °C [mL]. */
  readonly potVolumeMl: number;
  /** True temperature of what surrounds the bulb: vapour, or gas when none is there. */
  readonly headVapourTemperatureC: number;
  /** Temperature of the bulb itself, behind by its lag. */
  readonly bulbTemperatureC: number;
  /** Ethanol in the last vapour that came to the head [mol/mol]; 0 before the first. */
  readonly headVapourMoleFraction: number;
  /** Strength of that vapour when condensed [% vol at 20 °C]. */
  readonly headVapourStrengthAbv: number;
  /** Light volatiles in that vapour [mol/mol]. */
  readonly headVapourTraceMoleFraction: number;
  /** Share of the head's gas space filled with vapour, 0 … 1. */
  readonly bathedFraction: number;
  readonly vapourAtHead: boolean;
  /** Vapour leaving the pot [mol/s]. */
  readonly boilUpMolPerS: number;
  /** Liquid going back down per distillate, (boil-up − distillate)/distillate; null without distillate. */
  readonly refluxRatio: number | null;
  /** All distillate that has dropped, as volume at 20 °C [mL]. */
  readonly distillateVolumeMl: number;
  readonly distillateRateMlPerMin: number;
  /** Distillate condensed from vapour at or above, and below, the strength limit [mL at 20 °C]. */
  readonly aboveLimitMl: number;
  readonly belowLimitMl: number;
  readonly aboveLimitEthanolMol: number;
  /** The receiver in place; `receiverIndex` counts from 0. */
  readonly receiverIndex: number;
  readonly receiver: ReceiverState;
}

/** Where the ethanol, water and heat of a run have gone, for checking that none is lost. */
export interface BatchLedger {
  readonly ethanolMol: number;
  readonly waterMol: number;
  /** Light volatiles, in the order acetaldehyde, methanol, ethyl acetate; empty without them. */
  readonly traceMol: readonly number[];
  /** Heat in liquids and glass above 80 °C [J]. */
  readonly storedJ: number;
  readonly heatInJ: number;
  readonly lostJ: number;
  readonly coolingWaterJ: number;
  /** Heat the distillate carried away, above 80 °C as liquid [J]. */
  readonly distillateJ: number;
}
