import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { nodeStep, packageFile, projectRoot, type Step } from './step.ts';

/** What was checked before is kept, so that the second time costs a fraction. */
export function typesStep(layer: string): Step {
  const folder = path.join(projectRoot, '.build', 'types');
  mkdirSync(folder, { recursive: true });
  return nodeStep(`types of ${layer}`, [
    packageFile('typescript/bin/tsc'),
    '-p',
    layer,
    '--incremental',
    '--tsBuildInfoFile',
    path.join(folder, `${layer}.tsbuildinfo`),
  ]);
}
