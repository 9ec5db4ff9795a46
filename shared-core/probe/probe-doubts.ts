import { type Contribution, standardFromHalfWidth } from '../uncertainty/index.ts';
import { applyCalibration, type Calibration } from './calibration.ts';
import { platinumSlopeOhmPerK } from './platinum.ts';
import type { ProbeBudgetSetup } from './probe-budget-setup.ts';
import { sensorToleranceK } from './sensor-tolerance.ts';
import { type ThermocoupleType, thermocoupleEmfMv } from './thermocouple.ts';

/** Stem conduction of a short probe in vapour; common practice, no source. */
const usualImmersionK = 0.1;
/** A response time measured in water is that uncertain in vapour; round figure, no source. */
const usualTimeConstantPart = 0.3;

/** Every doubt of a head reading, in K per unit of its input. */
export function probeDoubts(setup: ProbeBudgetSetup): readonly Contribution[] {
  const { calibration, lag } = setup;
  // Noise and steps reach the result through the gain and, when lag is corrected, through its penalty.
  const amplification = (calibration?.gain ?? 1) * (lag?.noisePenalty ?? 1);
  return [
    calibration === undefined ? tolerance(setup) : calibrated(setup.temperatureC, calibration),
    limits('drift since the calibration', setup.driftK ?? 0, 1, 'stated limits'),
    limits(
      'smallest step',
      setup.resolutionK / 2,
      amplification,
      `steps of ${setup.resolutionK} °C`,
    ),
    {
      name: 'noise of a reading',
      distribution: 'normal' as const,
      inputStandardUncertainty: setup.noiseK,
      sensitivity: amplification,
      reason:
        lag?.noisePenalty == null
          ? 'scatter of single readings'
          : `scatter of single readings, times ${lag.noisePenalty.toPrecision(2)} for the lag correction`,
    },
    limits(
      'heat along the stem',
      setup.immersionK ?? usualImmersionK,
      1,
      setup.immersionK === undefined ? 'usual for a short probe; no source' : 'stated limits',
    ),
    ...(lag === undefined ? [] : [lagDoubt(lag)]),
    ...electricalDoubts(setup),
  ].filter(({ inputStandardUncertainty }) => inputStandardUncertainty !== 0);
}

function limits(
  name: string,
  halfWidth: number,
  sensitivity: number,
  reason: string,
): Contribution {
  return {
    name,
    distribution: 'rectangular',
    inputStandardUncertainty: standardFromHalfWidth('rectangular', halfWidth),
    sensitivity,
    reason,
  };
}

function tolerance({ sensor, temperatureC }: ProbeBudgetSetup): Contribution {
  const toleranceK = sensorToleranceK(sensor, temperatureC);
  return limits(
    'tolerance of the sensor',
    toleranceK,
    1,
    `promised limits ± ${toleranceK.toFixed(2)} °C at ${temperatureC.toFixed(0)} °C`,
  );
}

function calibrated(temperatureC: number, calibration: Calibration): Contribution {
  const readingC = (temperatureC - calibration.offsetK) / calibration.gain;
  return {
    name: 'calibration',
    distribution: 'normal',
    inputStandardUncertainty: applyCalibration(calibration, readingC).standardUncertaintyK,
    sensitivity: 1,
    reason: 'doubt of the fixed points and of the readings there',
  };
}

function lagDoubt(lag: NonNullable<ProbeBudgetSetup['lag']>): Contribution {
  const { timeConstantS, slopeKPerS } = lag;
  return lag.noisePenalty === null
    ? limits(
        'lag, not corrected',
        timeConstantS,
        slopeKPerS,
        `${timeConstantS.toFixed(1)} s behind`,
      )
    : limits(
        'time constant of the lag correction',
        lag.timeConstantToleranceS ?? usualTimeConstantPart * timeConstantS,
        slopeKPerS,
        lag.timeConstantToleranceS === undefined
          ? '± 30 %; round figure, no source'
          : 'stated limits',
      );
}

/** A calibration takes the wires with it; the cold junction moves with the room and stays. */
function electricalDoubts(setup: ProbeBudgetSetup): readonly Contribution[] {
  const { sensor, temperatureC, calibration, leads, coldJunctionToleranceK } = setup;
  const found: Contribution[] = [];
  if (leads !== undefined && calibration === undefined) {
    const sensitivity = 1 / platinumSlopeOhmPerK(temperatureC, leads.r0Ohm);
    const reason = `two wires of together ${leads.resistanceOhm} Ω read as heat`;
    found.push(limits('resistance of the leads', leads.resistanceOhm, sensitivity, reason));
  }
  if (sensor.kind === 'thermocouple' && coldJunctionToleranceK !== undefined) {
    const sensitivity = slopeMvPerK(sensor.type, 25) / slopeMvPerK(sensor.type, temperatureC);
    found.push(
      limits('cold junction', coldJunctionToleranceK, sensitivity, 'limits of its thermometer'),
    );
  }
  return found;
}

function slopeMvPerK(type: ThermocoupleType, temperatureC: number): number {
  return thermocoupleEmfMv(type, temperatureC + 0.5) - thermocoupleEmfMv(type, temperatureC - 0.5);
}
