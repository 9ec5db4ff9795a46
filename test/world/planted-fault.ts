/** Defects put into the program on purpose, each to show that one invariant bites. */
export const plantedFaults = {
  'sync-lies': 'saved-survives-a-power-cut',
  'reading-lost': 'every-reading-once',
  'reading-doubled': 'every-reading-once',
  'byte-turned': 'log-is-whole',
  'verdict-differs': 'live-and-replay-agree',
  'alarm-withheld': 'heat-off-stands-in-every-window',
  'age-stands-still': 'no-old-number-as-new',
  'line-kept-whole': 'memory-is-bounded',
  'never-back': 'program-comes-back',
  'viewer-obeyed': 'viewer-commands-nothing',
} as const;

export type PlantedFault = keyof typeof plantedFaults;
export type Invariant = (typeof plantedFaults)[PlantedFault];
