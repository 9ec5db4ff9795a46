import type { Rig } from './rig.ts';

/**
 * Glassware as found in teaching laboratories. Plates follow from height per plate in
 * test/reference/column_typicals.csv, losses and heat capacities from the same order-of-magnitude
 * table and from glass at 0.8 J/(g K): all from memory, defaults that people change to their own.
 */
const common = {
  flask: { heatCapacityJPerK: 110, lossWPerK: 0.16 },
  head: {
    heatCapacityJPerK: 26,
    lossWPerK: 0.06,
    filmWPerK: 3,
    vapourSpaceMl: 40,
    recedeS: 8,
  },
  condenser: { distillateTemperatureC: 25, drainS: 8 },
  bulb: { wetT90S: 8, dryT90S: 60 },
  returnedFraction: 0,
} as const;

/** Four sets of glassware, from none to good packing; each works with 200–350 mL in a 250–500 mL flask; common practice, no source. */
export const teachingRigs = {
  simpleHead: {
    ...common,
    description: 'Still head straight on the flask, no column',
    plates: 0,
    column: { heatCapacityJPerK: 25, lossWPerK: 0.06, holdUpMl: 0.3, drainS: 4 },
    heater: { powerW: 90, timeConstantS: 60 },
  },
  vigreux: {
    ...common,
    description: 'Vigreux column, 30 cm, unlagged',
    plates: 2.5,
    column: { heatCapacityJPerK: 110, lossWPerK: 0.36, holdUpMl: 1.5, drainS: 6 },
    heater: { powerW: 110, timeConstantS: 60 },
  },
  glassBeads: {
    ...common,
    description: 'Column of 30 cm filled with glass beads, unlagged',
    plates: 5,
    column: { heatCapacityJPerK: 190, lossWPerK: 0.45, holdUpMl: 8, drainS: 12 },
    heater: { powerW: 120, timeConstantS: 60 },
  },
  wirePacking: {
    ...common,
    description: 'Column of 30 cm filled with wire rings, unlagged',
    plates: 8,
    column: { heatCapacityJPerK: 150, lossWPerK: 0.5, holdUpMl: 9, drainS: 12 },
    heater: { powerW: 130, timeConstantS: 60 },
  },
} as const satisfies Readonly<Record<string, Rig>>;
