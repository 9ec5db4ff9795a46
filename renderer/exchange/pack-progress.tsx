import type { PackStep } from './fetch-pack.ts';

/** How far a pack is; announced once, so that nobody hears every file's name. */
export function PackProgress({ step }: { readonly step: PackStep }) {
  return (
    <div className="pack-progress">
      <p role="status">Making the pack …</p>
      <progress value={step.share} max={1} aria-label="How far the pack is" />
      <p className="small soft">{step.doing}</p>
    </div>
  );
}
