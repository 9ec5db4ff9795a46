import type { Channel } from '../run/index.ts';
import type { ChannelValue } from './to-channel-value.ts';

export interface PowerOnScreen {
  /** The same value, or the value marked `suspect` when it is only the sensor's power-on content. */
  screen(value: ChannelValue): ChannelValue;
}

/**
 * The digital one-wire sensor's register holds 85 °C (0x0550) until its first conversion is done.
 * Source: the sensor's data sheet, "power-on reset value"; see test/reference/probe_digital_one_wire.json.
 */
export const powerOnC = 85;

/** A still head does not jump this far between two readings; a sensor that lost its supply does. */
const jumpK = 3;

/**
 * Marks an exact 85 °C as suspect while nothing else has been heard from that channel since opening,
 * or when the value jumped there from more than 3 K away. A head that climbs through 85 °C is not doubted.
 *
 * @example
 * createPowerOnScreen().screen({ channel: 'head', value: 85, unit: '°C', quality: 'good', doubt: null }).doubt // => "power-on-value"
 */
export function createPowerOnScreen(): PowerOnScreen {
  const lastBelieved = new Map<Channel, number>();
  return {
    screen(value) {
      if (value.unit !== '°C' || value.quality !== 'good') return value;
      const before = lastBelieved.get(value.channel);
      const jumped = before === undefined || Math.abs(before - powerOnC) > jumpK;
      if (value.value === powerOnC && jumped) {
        return { ...value, quality: 'suspect', doubt: 'power-on-value' };
      }
      lastBelieved.set(value.channel, value.value);
      return value;
    },
  };
}
