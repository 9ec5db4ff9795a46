import { nodeStep, type Step } from './step.ts';

/** The types of these layers, or of all, in one process. */
export function typesStep(layers: readonly string[] = []): Step {
  const name = layers.length === 0 ? 'types' : `types of ${layers.join(', ')}`;
  return nodeStep(name, ['--import', 'tsx', 'scripts/check-types.ts', ...layers]);
}
