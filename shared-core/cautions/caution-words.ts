import { worded } from '../wording/index.ts';
import type { Caution } from './caution.ts';

/**
 * A caution as running text: what to do, then why.
 *
 * @example
 * cautionWords({ act: 'Steam burns.', because: 'Keep hands away.' }) // => "Steam burns. Keep hands away."
 */
export function cautionWords({ act, because }: Pick<Caution, 'act' | 'because'>): string {
  return worded('{act} {because}', { act, because });
}
