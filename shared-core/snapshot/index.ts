export * from './alarm.ts';
export * from './estimate.ts';
export * from './forecast-view.ts';
export * from './run-event.ts';
export * from './snapshot.ts';
export * from './stage.ts';
export * from './verdicts.ts';
