import { type CautionId, cautionOf } from '../cautions/index.ts';
import type { Alarm, AlarmPriority } from '../snapshot/index.ts';
import type { AlarmDelays } from './alarm-track.ts';

/** What is fixed about an alarm: what to do, what happens otherwise, how urgent, how patient. */
export interface AlarmDefinition extends AlarmDelays {
  readonly priority: AlarmPriority;
  readonly act: string;
  readonly consequence: string;
  /** Said with the act: how it is done without being hurt. */
  readonly caution: CautionId | null;
  /** Whether it may be put aside for some minutes: never where waiting can hurt somebody. */
  readonly canWait: boolean;
}

/** Switched off alone a mantle boils on, so the act says what is to be done. */
export const heatOffAct = 'Take the heat off (flame out, mantle down)';

/**
 * Every alarm with the act it demands. Delays are chosen here so that one odd second never calls:
 * the conditions behind them are already filtered, so they stay short where time is product.
 */
export const alarmCatalogue: Readonly<Record<Alarm, AlarmDefinition>> = {
  'plateau-departure': {
    priority: 'high',
    act: `${heatOffAct} and change the receiver.`,
    consequence: 'Each further minute runs weaker distillate into the main fraction.',
    caution: 'drop-heat',
    canWait: true,
    onDelayS: 4,
    offDelayS: 20,
  },
  'over-limit': {
    priority: 'high',
    act: `${heatOffAct} now.`,
    consequence: 'What comes over is weaker than the strength you asked for.',
    caution: 'drop-heat',
    canWait: true,
    onDelayS: 5,
    offDelayS: 20,
  },
  'near-dryness': {
    priority: 'high',
    act: `${heatOffAct} now and let the pot cool.`,
    consequence: cautionOf('dryness').because,
    caution: 'drop-heat',
    canWait: false,
    onDelayS: 0,
    offDelayS: 60,
  },
  'condenser-warm': {
    priority: 'high',
    act: `${heatOffAct} and restore the cooling water.`,
    consequence: cautionOf('cooling-water').because,
    caution: 'drop-heat',
    canWait: false,
    onDelayS: 15,
    offDelayS: 30,
  },
  surging: {
    priority: 'medium',
    act: 'Ease the heat.',
    consequence: 'Liquid thrown up the column spoils the separation.',
    caution: null,
    canWait: true,
    onDelayS: 10,
    offDelayS: 60,
  },
  'probe-fault': {
    priority: 'high',
    act: 'Read the glass thermometer by eye; leave the probe until the still is cold.',
    consequence:
      'Until the head can be trusted the heat-off call waits, or may come late or not at all.',
    caution: 'hot-head',
    canWait: true,
    onDelayS: 0,
    offDelayS: 5,
  },
  attention: {
    priority: 'medium',
    act: 'Go to the still and confirm that you are there.',
    consequence: cautionOf('attended').because,
    caution: null,
    canWait: false,
    onDelayS: 0,
    offDelayS: 0,
  },
};
