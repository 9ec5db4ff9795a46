import { z } from 'zod';
import { answeredSchema, events } from '#shared-core';
import type { LiveView } from '../../run-library/index.ts';

const requestId = z.int();

/** A run of which not all is in its files, as whoever reads them must know it. */
export interface ToldRun {
  readonly runId: string;
  readonly view: LiveView;
}

/** What the services ask of the desk. Both ends are one program, so the view of a run needs no second look. */
export const toDeskSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('open'),
    runsFolder: z.string(),
    app: z.strictObject({
      version: z.string(),
      modelVersion: z.string(),
      shell: z.enum(['electron', 'loopback']),
    }),
  }),
  z.strictObject({
    type: z.literal('ask'),
    id: requestId,
    name: z.string(),
    body: z.unknown(),
    mayWrite: z.boolean(),
    underWay: z.custom<ToldRun>().nullable(),
    /** Runs that have ended and that the disk has not taken yet. */
    notSaved: z.array(z.custom<ToldRun>()).readonly(),
  }),
  z.strictObject({ type: z.literal('close') }),
]);
export type ToDesk = z.infer<typeof toDeskSchema>;

/** What the desk answers and tells; answers are checked where they are shown. */
export const fromDeskSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('answer'),
    id: requestId,
    result: answeredSchema(z.unknown()),
  }),
  z.strictObject({ type: z.literal('pack'), progress: events.pack }),
]);
export type FromDesk = z.infer<typeof fromDeskSchema>;
