export * from './events.ts';
export * from './probe-schemas.ts';
export * from './recorded-change.ts';
export * from './requests.ts';
export * from './run-schemas.ts';
export * from './service.ts';
export * from './service-problem.ts';
export * from './wire.ts';
