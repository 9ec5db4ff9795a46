/** Everything in German, room by room. */
import { cautions } from './cautions.ts';
import { monitor } from './monitor.ts';
import { windowWords } from './window-words.ts';

export const german: Readonly<Record<string, string>> = { ...cautions, ...monitor, ...windowWords };
