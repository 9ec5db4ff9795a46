import { z } from 'zod';
import { answeredSchema, events, linkChangeSchema, readingSchema, requests } from '#shared-core';

const { body: connectBody, answer: connectAnswer } = requests['probe/connect'];
const { body: markBody } = requests['run/mark'];

const requestId = z.int();

/** What the services ask of the serial process. */
export const toWorkerSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('connect'), id: requestId, ...connectBody.shape }),
  z.strictObject({ type: z.literal('disconnect'), id: requestId }),
  z.strictObject({ type: z.literal('list-ports'), id: requestId }),
  z.strictObject({ type: z.literal('find'), id: requestId, path: z.string() }),
  z.strictObject({ type: z.literal('suspend'), id: requestId }),
  z.strictObject({ type: z.literal('resume'), id: requestId }),
  z.strictObject({ type: z.literal('mark'), markId: z.int(), ...markBody.shape }),
  z.strictObject({ type: z.literal('ping'), count: z.int() }),
  /** The last batch was taken; the next may come. */
  z.strictObject({ type: z.literal('taken') }),
  z.strictObject({ type: z.literal('close') }),
]);

/** A moment of the computer's clock: the process knows no run. */
const heardAt = { atS: z.number() };
const heardReadingSchema = z.strictObject({
  ...readingSchema.omit({ kind: true, timeS: true }).shape,
  ...heardAt,
});
const changeSchema = z.strictObject({
  ...linkChangeSchema.omit({ kind: true, timeS: true }).shape,
  ...heardAt,
});

/** Readings and link changes stay in the order in which they happened. */
const heardItemSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('reading'), reading: heardReadingSchema }),
  z.strictObject({ kind: z.literal('link'), change: changeSchema }),
]);

/** Readings that found no room on their way: how many, and of when. */
const givenUpSchema = z.strictObject({
  kind: z.literal('given-up'),
  readings: z.int().min(1),
  fromS: z.number(),
  toS: z.number(),
});

export const batchItemSchema = z.discriminatedUnion('kind', [heardItemSchema, givenUpSchema]);

/** What the serial process tells the services; its moments are those of the computer's monotonic clock. */
export const fromWorkerSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('batch'), items: z.array(batchItemSchema) }),
  /** All that was heard before this moment is in the batches before this message. */
  z.strictObject({ type: z.literal('heard'), upToS: z.number() }),
  z.strictObject({ type: z.literal('status'), status: events.probe }),
  z.strictObject({ type: z.literal('ports'), ...events.ports.shape }),
  z.strictObject({ type: z.literal('pong'), count: z.int() }),
  z.strictObject({
    type: z.literal('connected'),
    id: requestId,
    result: answeredSchema(connectAnswer),
  }),
  z.strictObject({
    type: z.literal('found'),
    id: requestId,
    result: answeredSchema(requests['probe/find'].answer),
  }),
  z.strictObject({ type: z.literal('listed'), id: requestId, ...events.ports.shape }),
  z.strictObject({ type: z.literal('done'), id: requestId }),
]);

export type ToWorker = z.infer<typeof toWorkerSchema>;
export type FromWorker = z.infer<typeof fromWorkerSchema>;
export type HeardItem = z.infer<typeof heardItemSchema>;
export type BatchItem = z.infer<typeof batchItemSchema>;
