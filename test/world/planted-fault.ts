/** What must hold whatever happens. */
export type Invariant =
  | 'saved-survives-a-power-cut'
  | 'every-reading-once'
  | 'every-mark-once'
  | 'told-is-on-record'
  | 'log-is-whole'
  | 'live-and-replay-agree'
  | 'heat-off-stands-in-every-window'
  | 'no-old-number-as-new'
  | 'window-has-the-whole-run'
  | 'memory-is-bounded'
  | 'program-comes-back'
  | 'viewer-commands-nothing'
  | 'second-program-changes-nothing'
  | 'kept-stays-kept'
  | 'table-has-every-reading'
  | 'pack-is-whole'
  | 'warmth-has-every-minute'
  | 'no-request-fails-inside'
  | 'rehearsal-gives-the-probe-back'
  | 'receiver-holds-what-came-over'
  | 'lost-folder-is-told'
  | 'ended-run-is-saved'
  | 'held-disk-is-told'
  | 'acts-wait-for-no-disk';

/** Defects put into the program on purpose, each to show that one invariant bites. */
export const plantedFaults = {
  'sync-lies': 'saved-survives-a-power-cut',
  'sync-of-half': 'saved-survives-a-power-cut',
  'reading-lost': 'every-reading-once',
  'reading-doubled': 'every-reading-once',
  'mark-not-kept': 'every-mark-once',
  'told-before-it-happened': 'told-is-on-record',
  'byte-turned': 'log-is-whole',
  'record-left-out': 'log-is-whole',
  'verdict-differs': 'live-and-replay-agree',
  'alarm-withheld': 'heat-off-stands-in-every-window',
  'window-reads-the-disk': 'heat-off-stands-in-every-window',
  'window-goes-deaf': 'no-old-number-as-new',
  'age-stands-still': 'no-old-number-as-new',
  'input-kept-from-windows': 'window-has-the-whole-run',
  'line-kept-whole': 'memory-is-bounded',
  'timers-pile-up': 'memory-is-bounded',
  'never-back': 'program-comes-back',
  'stays-shut': 'program-comes-back',
  'desk-stays-dead': 'program-comes-back',
  'viewer-obeyed': 'viewer-commands-nothing',
  'lock-ignored': 'second-program-changes-nothing',
  'labels-not-synced': 'kept-stays-kept',
  'set-up-not-written': 'kept-stays-kept',
  'deletion-goes-unseen': 'every-reading-once',
  'table-lacks-a-row': 'table-has-every-reading',
  'minutes-not-written': 'warmth-has-every-minute',
  'piece-goes-missing': 'pack-is-whole',
  'handler-throws': 'no-request-fails-inside',
  'probe-not-given-back': 'rehearsal-gives-the-probe-back',
  'still-not-let-go': 'rehearsal-gives-the-probe-back',
  'lost-folder-kept-quiet': 'lost-folder-is-told',
  'ended-run-kept-quiet': 'ended-run-is-saved',
  'write-is-waited-for': 'no-old-number-as-new',
  'held-disk-kept-quiet': 'held-disk-is-told',
  'held-disk-told-for-ever': 'held-disk-is-told',
  'act-looks-at-the-disk': 'acts-wait-for-no-disk',
  'space-is-asked-again': 'memory-is-bounded',
  'receiver-runs-empty': 'receiver-holds-what-came-over',
} as const satisfies Readonly<Record<string, Invariant>>;

export type PlantedFault = keyof typeof plantedFaults;
