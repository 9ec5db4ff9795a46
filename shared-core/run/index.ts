export * from './channel.ts';
export * from './default-run-settings.ts';
export * from './link-change.ts';
export * from './mark.ts';
export * from './reading.ts';
export * from './run-input.ts';
export * from './run-settings.ts';
export * from './standing-marks.ts';
