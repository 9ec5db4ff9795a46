import { type RequestAnswer, say } from '#shared-core';

export type DoubtfulFile = RequestAnswer<'kept-files/doubtful'>['files'][number];

const heldWords: Readonly<Record<DoubtfulFile['holds'], string>> = {
  rigs: say('the rigs of earlier lessons'),
  probes: say('how each probe was understood the last time'),
  ferment: say('the log of a ferment'),
};

/** Why something that was kept is not there, what becomes of its file, and what to do. */
export function doubtfulFileWords({ name, holds, state }: DoubtfulFile): string {
  const held = heldWords[holds];
  if (state === 'newer') {
    return say(
      'A newer version of this program wrote “{name}” ({held}). This one leaves it as it is and can’t use it. Use the newer version, or go on without.',
      { name, held },
    );
  }
  return holds === 'ferment'
    ? say(
        'The beginning of “{name}” ({held}) can’t be read. The file is left as it is and not listed. Show it to whoever looks after this computer.',
        { name, held },
      )
    : say(
        '“{name}” ({held}) can’t be read, or only in part. When something new is kept, the file as it is now stays beside it as “{name}.not-understood”. Show that to whoever looks after this computer, or go on without.',
        { name, held },
      );
}
