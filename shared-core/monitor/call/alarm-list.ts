import type { AlarmDefinition } from './alarm-definition.ts';
import { attention } from './attention.ts';
import { bulbDoubted } from './bulb-doubted.ts';
import { condenserWarm } from './condenser-warm.ts';
import { nearDryness } from './near-dryness.ts';
import { overLimit } from './over-limit.ts';
import { plateauDeparture } from './plateau-departure.ts';
import { probeImplausible } from './probe-implausible.ts';
import { probeLost } from './probe-lost.ts';
import { probesDisagree } from './probes-disagree.ts';
import { surging } from './surging.ts';

/**
 * Every alarm, most urgent first: what asks for the heat to be taken off before everything else. All lists, orders and
 * names of alarms follow from this one.
 */
export const alarmList = [
  nearDryness,
  condenserWarm,
  plateauDeparture,
  overLimit,
  probeLost,
  probeImplausible,
  probesDisagree,
  surging,
  bulbDoubted,
  attention,
] as const satisfies readonly AlarmDefinition[];

export type AlarmId = (typeof alarmList)[number]['id'];
