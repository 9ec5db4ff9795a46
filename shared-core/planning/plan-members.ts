import {
  type BatchSetup,
  heaterPowerForDripRateW,
  heaterPowerRangeW,
  type Rig,
} from '../column/index.ts';
import { createRandom } from '../random/index.ts';
import { type PlanRequest, usualPlanUncertainty } from './plan-request.ts';

/** One way the plan's inputs may really be. */
export interface PlanMember {
  readonly setup: BatchSetup;
  readonly collectW: number;
}

/**
 * Pairs drawn on either side of the stated inputs: what one run of a pair has too much, the other lacks, so that
 * the middle of a small ensemble is hardly shifted by chance. Whole pairs only: an odd number of runs has the inputs
 * as stated for the one left over.
 */
export function planMembers(request: PlanRequest): readonly PlanMember[] {
  const runs = request.runs ?? 48;
  const random = createRandom('plan');
  const members = runs % 2 === 1 ? [memberAt(request, [])] : [];
  while (members.length < runs) {
    const draw = [0, 1, 2, 3, 4].map(() => random.normal());
    members.push(memberAt(request, draw));
    members.push(
      memberAt(
        request,
        draw.map((deviate) => -deviate),
      ),
    );
  }
  return members;
}

function memberAt(request: PlanRequest, draw: readonly number[]): PlanMember {
  const { charge, rig, uncertainty = usualPlanUncertainty } = request;
  const [plates = 0, loss = 0, heat = 0, strength = 0, pressure = 0] = draw;
  const lossFactor = Math.exp(uncertainty.lossShare * loss);
  const heatFactor = Math.exp(uncertainty.heatShare * heat);
  const member: Rig = {
    ...rig,
    plates: clamp(rig.plates * Math.exp(uncertainty.platesShare * plates), 0, 40),
    column: { ...rig.column, lossWPerK: clamp(rig.column.lossWPerK * lossFactor, 0, 5) },
    head: { ...rig.head, lossWPerK: clamp(rig.head.lossWPerK * lossFactor, 0, 5) },
    heater: { ...rig.heater, powerW: inHeaterRange(rig.heater.powerW * heatFactor) },
  };
  return {
    collectW: collectingW(request, member, heatFactor),
    setup: {
      charge: {
        ...charge,
        strengthAbv: clamp(charge.strengthAbv + uncertainty.strengthAbv * strength, 0.2, 95),
      },
      rig: member,
      pressureKPa: clamp(request.pressureKPa + uncertainty.pressureKPa * pressure, 50, 110),
      roomTemperatureC: request.roomTemperatureC ?? 20,
      leastStrengthAbv: request.leastStrengthAbv,
      stepS: 2,
    },
  };
}

/** A person who sets a drip rate makes up for unknown losses, and hits the rate as well as the heat is known. */
function collectingW(request: PlanRequest, rig: Rig, heatFactor: number): number {
  const { collect, roomTemperatureC = 20 } = request;
  if (collect === undefined) return rig.heater.powerW;
  if (collect.kind === 'heat') return inHeaterRange(collect.powerW * heatFactor);
  const mlPerMin = clamp(collect.mlPerMin * heatFactor, 0, 100);
  return inHeaterRange(heaterPowerForDripRateW(rig, mlPerMin, roomTemperatureC));
}

function inHeaterRange(powerW: number): number {
  return clamp(powerW, heaterPowerRangeW.low, heaterPowerRangeW.high);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
