/** Why a head temperature may lie below every ethanol–water vapour. */
export type BelowAzeotropeCause =
  | 'bulb-not-bathed'
  | 'probe-lag'
  | 'wrong-pressure'
  | 'calibration'
  | 'lighter-volatiles';

/** One explanation with its weight among all five. */
export interface Explanation {
  readonly cause: BelowAzeotropeCause;
  /** 0 … 1; the weights of all causes add up to 1. */
  readonly weight: number;
  /** Plain words with numbers: why, and what to look at. */
  readonly reason: string;
}

/** What else is known at the time of the reading; everything may be left out. */
export interface BelowAzeotropeClues {
  /** Slope of the head temperature [K/min]. */
  readonly rateKPerMin?: number;
  /** Time since vapour first reached the bulb [min]. */
  readonly minutesSinceVapour?: number;
  /** Time in which the probe covers 90 % of a step [s]. */
  readonly responseTime90S?: number;
  /** Where the air pressure comes from. */
  readonly pressureSource?: 'barometer' | 'channel' | 'altitude' | 'assumed';
  /** Whether the probe was checked at a fixed point before the run. */
  readonly calibrated?: boolean;
  /** Whether distillate is dripping. */
  readonly distillateSeen?: boolean;
}

/** The clues with the size of the gap. */
export interface BelowAzeotropeGap extends BelowAzeotropeClues {
  /** How far the reading lies below the azeotrope [K]. */
  readonly shortfallK: number;
  readonly temperatureUncertaintyK: number;
  readonly pressureUncertaintyKPa: number;
  /** Slope of the dew pressure at the azeotrope [kPa/K]. */
  readonly pressurePerK: number;
}

type Weigher = (gap: BelowAzeotropeGap) => Explanation;

/**
 * Ranks what may make a head reading too cold. The weights are judgement (common practice, no source);
 * what each cause would have to amount to is computed.
 */
export function explainBelowAzeotrope(gap: BelowAzeotropeGap): readonly Explanation[] {
  const weighers: readonly Weigher[] = [
    weighBulb,
    weighLag,
    weighPressure,
    weighCalibration,
    weighVolatiles,
  ];
  const weighed = weighers.map((weigh) => weigh(gap));
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return weighed
    .map((explanation) => ({ ...explanation, weight: explanation.weight / total }))
    .sort((a, b) => b.weight - a.weight);
}

function weighBulb(gap: BelowAzeotropeGap): Explanation {
  const { shortfallK, rateKPerMin = 0, minutesSinceVapour, distillateSeen } = gap;
  const early = minutesSinceVapour === undefined || minutesSinceVapour < 5;
  const size = shortfallK > 3 ? 6 : shortfallK > 1 ? 3 : 1;
  const reason =
    distillateSeen === true
      ? 'Distillate drips, so vapour passes the head: the bulb may sit too high or too near the wall.'
      : Math.abs(rateKPerMin) > 0.5
        ? `The head still moves by ${rateKPerMin.toFixed(1)} K/min: vapour may not bathe the whole bulb yet.`
        : 'The bulb may not be bathed by vapour: see that it is wet and level with the side arm.';
  return {
    cause: 'bulb-not-bathed',
    weight: size * (early ? 1.5 : 0.7) * (distillateSeen === true ? 0.5 : 1),
    reason,
  };
}

function weighLag(gap: BelowAzeotropeGap): Explanation {
  const { shortfallK, rateKPerMin = 0, responseTime90S = 20 } = gap;
  // A first-order probe trails a ramp by rate × time constant; t90 = ln 10 time constants.
  const lagK = Math.max(0, (rateKPerMin / 60) * (responseTime90S / Math.LN10));
  const share = Math.min(1, lagK / shortfallK);
  const responseWords =
    gap.responseTime90S === undefined
      ? `whose response time is not known (here ${responseTime90S.toFixed(0)} s)`
      : `with a response time of ${responseTime90S.toFixed(0)} s`;
  return {
    cause: 'probe-lag',
    weight: 0.1 + 6 * share,
    reason:
      gap.rateKPerMin === undefined
        ? 'How fast the head moves is not known: while it climbs, a probe trails behind it.'
        : `At ${rateKPerMin.toFixed(1)} K/min a probe ${responseWords} ` +
          `trails by ${lagK.toFixed(2)} K of the ${shortfallK.toFixed(2)} K missing.`,
  };
}

/** What it is lower than, and what to look at. */
const pressureWords: Readonly<
  Record<NonNullable<BelowAzeotropeClues['pressureSource']> | 'unknown', string>
> = {
  barometer: 'entered: see that it is the local pressure, not the value reduced to sea level.',
  channel: 'its channel shows: hold it against a barometer in the room.',
  altitude: 'the altitude gives: enter what a barometer in the room shows.',
  assumed: 'assumed: nobody entered one, so enter what a barometer in the room shows.',
  unknown:
    'taken: see where it comes from, and that it is the local pressure, not the value reduced to sea level.',
};

function weighPressure(gap: BelowAzeotropeGap): Explanation {
  const { shortfallK, pressurePerK, pressureUncertaintyKPa, pressureSource } = gap;
  const neededKPa = shortfallK * pressurePerK;
  // An entered number may be the sea-level value of a weather report: 1.2 kPa for every 100 m.
  const spreadKPa =
    pressureSource === 'channel'
      ? Math.max(0.5, pressureUncertaintyKPa)
      : pressureSource === 'assumed' || pressureSource === undefined
        ? Math.max(3, pressureUncertaintyKPa)
        : Math.max(1.5, pressureUncertaintyKPa);
  return {
    cause: 'wrong-pressure',
    weight: 0.1 + 4 * Math.exp(-0.5 * (neededKPa / (2 * spreadKPa)) ** 2),
    reason: `The air pressure would have to be ${neededKPa.toFixed(1)} kPa lower than ${pressureWords[pressureSource ?? 'unknown']}`,
  };
}

function weighCalibration(gap: BelowAzeotropeGap): Explanation {
  const { shortfallK, temperatureUncertaintyK, calibrated } = gap;
  const spreadK = Math.max(calibrated === true ? 0.1 : 0.5, temperatureUncertaintyK);
  return {
    cause: 'calibration',
    weight: 0.1 + 3 * Math.exp(-0.5 * (shortfallK / (2 * spreadK)) ** 2),
    reason:
      calibrated === true
        ? `The probe was checked, yet it would have to read ${shortfallK.toFixed(2)} K too low.`
        : `The probe may read ${shortfallK.toFixed(2)} K too low: check it in melting ice and in steam.`,
  };
}

function weighVolatiles(gap: BelowAzeotropeGap): Explanation {
  const { shortfallK, rateKPerMin = 0, minutesSinceVapour, distillateSeen } = gap;
  const early = minutesSinceVapour === undefined || minutesSinceVapour < 15;
  const steady = Math.abs(rateKPerMin) < 0.3;
  return {
    cause: 'lighter-volatiles',
    weight:
      0.3 *
      (early ? 1.5 : 0.3) *
      (steady ? 1.5 : 1) *
      (distillateSeen === true ? 2 : 1) *
      (shortfallK > 10 ? 0.3 : 1),
    reason:
      'Lighter volatiles may distil first; in a sugar ferment they are usually too little to lower ' +
      'the head temperature, so look for the other causes first.',
  };
}
