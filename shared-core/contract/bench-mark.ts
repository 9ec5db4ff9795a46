import { alarmCatalogue } from '../monitor/call/index.ts';
import { type MarkBody, markBodySchema } from '../run/index.ts';
import { alarmSchema } from '../snapshot/index.ts';
import { worded } from '../wording/index.ts';

/**
 * Marks that may be made while a run goes on. Logs hold more: what older versions let people do is read and replayed as it
 * was, so the refusal stands here and not in the mark's own schema.
 */
export const benchMarkSchema = markBodySchema
  .refine(
    mayBePutAside,
    worded('This prompt cannot be put aside: waiting can hurt somebody. Do what it asks.'),
  )
  .refine(
    ({ type }) => type !== 'proof-burned',
    worded(
      'Nothing is burned beside a running still. Stop the run, let it cool, and prove the product in Look back.',
    ),
  );

function mayBePutAside(mark: MarkBody): boolean {
  if (mark.type !== 'alarm-shelved') return true;
  const alarm = alarmSchema.safeParse(mark.alarm);
  return !alarm.success || alarmCatalogue[alarm.data].mayBeShelved;
}
