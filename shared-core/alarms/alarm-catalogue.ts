import type { Alarm, AlarmPriority } from '../snapshot/index.ts';
import type { AlarmDelays } from './alarm-track.ts';

/** What is fixed about an alarm: what to do, what happens otherwise, how urgent, how patient. */
export interface AlarmDefinition extends AlarmDelays {
  readonly priority: AlarmPriority;
  readonly act: string;
  readonly consequence: string;
}

/**
 * Every alarm with the act it demands. Delays are chosen here so that one odd second never calls:
 * the conditions behind them are already filtered, so they stay short where time is product.
 */
export const alarmCatalogue: Readonly<Record<Alarm, AlarmDefinition>> = {
  'plateau-departure': {
    priority: 'high',
    act: 'Take the heat off and change the receiver.',
    consequence: 'Each further minute runs weaker distillate into the main fraction.',
    onDelayS: 4,
    offDelayS: 20,
  },
  'over-limit': {
    priority: 'high',
    act: 'Take the heat off now.',
    consequence: 'What comes over is weaker than the strength you asked for.',
    onDelayS: 5,
    offDelayS: 20,
  },
  'near-dryness': {
    priority: 'high',
    act: 'Take the heat off now and let the pot cool.',
    consequence: 'A pot boiled dry can crack and its residue can char or catch fire.',
    onDelayS: 0,
    offDelayS: 60,
  },
  'condenser-warm': {
    priority: 'high',
    act: 'Take the heat off and restore the cooling water.',
    consequence: 'Flammable vapour can leave the condenser uncondensed.',
    onDelayS: 15,
    offDelayS: 30,
  },
  surging: {
    priority: 'medium',
    act: 'Ease the heat.',
    consequence: 'Liquid thrown up the column spoils the separation.',
    onDelayS: 10,
    offDelayS: 60,
  },
  'probe-fault': {
    priority: 'high',
    act: 'Look at the thermometer by eye and mend the probe.',
    consequence:
      'Until the head can be trusted the heat-off call waits, or may come late or not at all.',
    onDelayS: 0,
    offDelayS: 5,
  },
  attention: {
    priority: 'medium',
    act: 'Go to the still and confirm that you are there.',
    consequence: 'A heated still with nobody beside it is dangerous.',
    onDelayS: 0,
    offDelayS: 0,
  },
};
