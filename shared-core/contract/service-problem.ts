import { z } from 'zod';
import { wordingOf, wordingSchema } from '../wording/index.ts';

/** With what its words were made from, where they are ours: whoever reads them may read another language. */
const worded = { message: z.string(), wording: wordingSchema.optional() };

/** Why a request could not be met. Words for people are made in the renderer from `kind`. */
export const serviceProblemSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('port-permission-denied'),
    path: z.string(),
    platform: z.string(),
  }),
  z.strictObject({ kind: z.literal('port-busy'), path: z.string() }),
  z.strictObject({ kind: z.literal('port-not-found'), path: z.string() }),
  z.strictObject({ kind: z.literal('port-failed'), path: z.string(), message: z.string() }),
  z.strictObject({ kind: z.literal('no-probe') }),
  z.strictObject({ kind: z.literal('already-recording'), runId: z.string() }),
  z.strictObject({ kind: z.literal('not-recording') }),
  z.strictObject({ kind: z.literal('run-not-found'), runId: z.string() }),
  /** It was ended, has gone on since, or was left for too long: nobody can go on with it. */
  z.strictObject({ kind: z.literal('run-over'), runId: z.string() }),
  /** It has ended, and what the disk has not taken of it is in memory alone: nothing of it is changed before it is saved. */
  z.strictObject({ kind: z.literal('run-not-saved'), runId: z.string() }),
  z.strictObject({ kind: z.literal('run-unreadable'), runId: z.string(), ...worded }),
  z.strictObject({ kind: z.literal('disk-full'), path: z.string() }),
  /** What was written is on its way, and nothing says that it arrived. */
  z.strictObject({ kind: z.literal('disk-held'), path: z.string() }),
  z.strictObject({ kind: z.literal('folder-read-only'), path: z.string() }),
  z.strictObject({ kind: z.literal('folder-unavailable'), path: z.string(), message: z.string() }),
  /** It was there, and is not any more: deleted, renamed or away with its drive. */
  z.strictObject({ kind: z.literal('folder-gone'), path: z.string() }),
  /** Another running program has the folder: its runs are that one's to change. */
  z.strictObject({ kind: z.literal('folder-in-use'), path: z.string() }),
  /** A newer version of this program wrote the file; it is left as it is. */
  z.strictObject({ kind: z.literal('kept-by-newer'), path: z.string() }),
  z.strictObject({ kind: z.literal('request-invalid'), ...worded }),
  z.strictObject({ kind: z.literal('viewer-may-not-command') }),
  /** Nobody was asked: there was no connection. */
  z.strictObject({ kind: z.literal('disconnected') }),
  /** Asked, and the connection broke before the answer: done or not, nobody can tell. */
  z.strictObject({ kind: z.literal('unanswered') }),
  /** Given up, since another wish for the probe came after it. */
  z.strictObject({ kind: z.literal('superseded') }),
  /** A file was made, and lacks what the message says. */
  z.strictObject({ kind: z.literal('file-incomplete'), ...worded }),
  z.strictObject({ kind: z.literal('internal'), ...worded }),
]);

/** What a request comes to, as it crosses a socket or goes between processes. */
export const answeredSchema = <T extends z.ZodType>(value: T) =>
  z.discriminatedUnion('ok', [
    z.strictObject({ ok: z.literal(true), value }),
    z.strictObject({ ok: z.literal(false), error: serviceProblemSchema }),
  ]);

export type ServiceProblem = z.infer<typeof serviceProblemSchema>;

/**
 * A problem on its way to another process, with what its words were made from.
 *
 * @param problem with a message in English
 *
 * Source: this project's rule.
 * @example
 * problemToSend({ kind: 'request-invalid', message: worded('the file is too large') }).wording // => { "the file is too large": { "sentence": "the file is too large", "values": {} } }
 * problemToSend({ kind: 'no-probe' }) // => { "kind": "no-probe" }
 */
export function problemToSend(problem: ServiceProblem): ServiceProblem {
  switch (problem.kind) {
    case 'request-invalid':
    case 'run-unreadable':
    case 'file-incomplete':
    case 'internal': {
      const wording = { ...problem.wording, ...wordingOf([problem.message]) };
      return Object.keys(wording).length === 0 ? problem : { ...problem, wording };
    }
    default:
      return problem;
  }
}
