import { cautions } from './cautions.ts';
import { ferment } from './ferment.ts';
import { help } from './help.ts';
import { lessons } from './lessons.ts';
import { measure } from './measure.ts';
import { monitor } from './monitor.ts';
import { planning } from './planning.ts';
import { prepare } from './prepare.ts';
import { probe } from './probe.ts';
import { prompts } from './prompts.ts';
import { understand } from './understand.ts';
import { watch } from './watch.ts';
import { window } from './window.ts';
import { words } from './words.ts';

/** Every sentence stands in the file of the room that says it, or says it first. */
export const german: Readonly<Record<string, string>> = {
  ...cautions,
  ...ferment,
  ...help,
  ...lessons,
  ...measure,
  ...monitor,
  ...planning,
  ...prepare,
  ...probe,
  ...prompts,
  ...understand,
  ...watch,
  ...window,
  ...words,
};
