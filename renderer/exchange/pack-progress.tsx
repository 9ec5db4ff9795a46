import { say } from '#shared-core';
import type { PackMaking } from './use-pack.ts';

/** How far a pack is, and that it is done; announced once each, so that nobody hears every file's name. */
export function PackProgress({ pack: { step, madeFile } }: { readonly pack: PackMaking }) {
  if (step === null && madeFile === null) return null;
  return (
    <div className="pack-progress">
      <p role="status">
        {step === null
          ? say('The pack is ready: {madeFile}', { madeFile: madeFile ?? '' })
          : say('Making the pack …')}
      </p>
      {step && (
        <>
          <progress value={step.share} max={1} aria-label={say('How far the pack is')} />
          <p className="small soft">{step.doing}</p>
        </>
      )}
    </div>
  );
}
