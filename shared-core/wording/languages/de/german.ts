import { books } from './books.ts';
import { cautions } from './cautions.ts';
import { compare } from './compare.ts';
import { ferment } from './ferment.ts';
import { fermentWarmth } from './ferment-warmth.ts';
import { help } from './help.ts';
import { lessons } from './lessons.ts';
import { lookBack } from './look-back.ts';
import { measure } from './measure.ts';
import { monitor } from './monitor.ts';
import { planning } from './planning.ts';
import { prepare } from './prepare.ts';
import { probe } from './probe.ts';
import { prompts } from './prompts.ts';
import { takeIn } from './take-in.ts';
import { understand } from './understand.ts';
import { warmth } from './warmth.ts';
import { watch } from './watch.ts';
import { window } from './window.ts';
import { words } from './words.ts';

/** Every sentence stands in the file of the room that says it, or says it first. */
export const german: Readonly<Record<string, string>> = {
  ...books,
  ...cautions,
  ...compare,
  ...ferment,
  ...fermentWarmth,
  ...help,
  ...lessons,
  ...lookBack,
  ...measure,
  ...monitor,
  ...planning,
  ...prepare,
  ...probe,
  ...prompts,
  ...takeIn,
  ...understand,
  ...warmth,
  ...watch,
  ...window,
  ...words,
};
