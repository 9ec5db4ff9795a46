import type { RunInput } from '../run/index.ts';
import type { LogRecord } from './log-record.ts';
import { unpackReading } from './packed-reading.ts';

/** What a record gave the monitor: none for headers, changes and the like. */
export function inputsOfRecord({ body }: Pick<LogRecord, 'body'>): readonly RunInput[] {
  switch (body.kind) {
    case 'readings':
      return body.readings.map(unpackReading);
    case 'mark':
    case 'link':
      return [body];
    default:
      return [];
  }
}
