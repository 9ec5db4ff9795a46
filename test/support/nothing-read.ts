import type { FermentRead } from '#shared-core';

/** An entry of a ferment's log in which nothing was read yet. */
export const nothingRead: Omit<FermentRead, 'atIso'> = {
  gravity: null,
  massG: null,
  temperatureC: null,
  bubblesPerMin: null,
  ph: null,
  refractometerPercent: null,
  treatments: [],
  note: '',
};
