import { cautionsAt, cautionWords, say, told } from '#shared-core';

const steamCautions = cautionsAt('calibrate')
  .map((caution) => told(cautionWords(caution)))
  .join(' ');

/** How a probe is held in steam, and what burns there. */
export const steamHow = say(
  'Probe in the neck of a flask, above the water, not in it; then boil the water well. {steamCautions}',
  { steamCautions },
);
