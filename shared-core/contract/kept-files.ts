import { z } from 'zod';

/** A file beside the runs that this program can't read as it should. */
export const doubtfulFileSchema = z.strictObject({
  /** In the folder of runs. */
  name: z.string(),
  holds: z.enum(['rigs', 'probes', 'ferment']),
  /** `newer`: a later version of this program wrote it; `not-understood`: it is damaged, or in part. */
  state: z.enum(['newer', 'not-understood']),
});

/** Files that are kept from one lesson to the next; only for who may do something about them. */
export const keptFilesRequests = {
  /** As they were found when the program started. */
  'kept-files/doubtful': {
    commands: true,
    body: z.strictObject({}),
    answer: z.strictObject({ files: z.array(doubtfulFileSchema) }),
  },
} as const;
