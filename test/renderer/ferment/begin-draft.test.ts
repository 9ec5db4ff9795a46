import { describe, expect, test } from 'vitest';
import {
  beginDraft,
  draftOfStated,
  statedFromDraft,
} from '../../../renderer/ferment/begin-draft.ts';
import type { StatedFerment } from '../../../shared-core/index.ts';

const pears: StatedFerment = {
  name: 'Pear juice',
  beganAtIso: '2026-05-01T08:00:42.000Z',
  volumeMl: 1000,
  sugarG: { low: 100, high: 122 },
  wentIn: '1 L of pear juice',
};
const sweetened: StatedFerment = { ...pears, sugarG: { low: 180, high: 180 } };

/** What is stated after the fields of `stated` were changed by `typed`. */
function corrected(stated: StatedFerment, typed: Partial<ReturnType<typeof beginDraft>>) {
  const draft = draftOfStated(stated, ',');
  const { sugarG, beganAtIso } = stated;
  return statedFromDraft({ ...draft, ...typed }, { draft, sugarG, beganAtIso });
}

describe('what is stated of a ferment, as typed', () => {
  test.each([
    ['a range of sugar, and the second it began', pears],
    ['one sugar, to the last digit', sweetened],
    ['a volume with a decimal', { ...pears, volumeMl: 1000.5, sugarG: null }],
  ])('left alone, it stays as it was: %s', (_, stated) => {
    expect(corrected(stated, {})).toEqual({ ok: true, value: stated });
  });

  test.each<[string, StatedFerment, string, StatedFerment['sugarG']]>([
    // 342.297 g of sucrose give 360.312 g of hexose.
    ['typed where none was known', { ...pears, sugarG: null }, '171', { low: 180, high: 180 }],
    ['typed where a plan had a range', pears, '171', { low: 180, high: 180 }],
    ['taken away again', sweetened, '', null],
  ])('table sugar %s', (_, stated, tableSugarG, sugarG) => {
    const read = corrected(stated, { tableSugarG });
    const found = read.ok ? read.value.sugarG : undefined;
    expect(found && { low: Math.round(found.low), high: Math.round(found.high) }).toEqual(sugarG);
  });

  test('a plan is a beginning too: its sugar stays where its field is left empty', () => {
    const beganAtIso = '2026-05-01T08:00:00.000Z';
    const draft = beginDraft(pears);
    const read = statedFromDraft(draft, { draft, sugarG: pears.sugarG, beganAtIso });
    expect(read).toMatchObject({ ok: true, value: { sugarG: pears.sugarG, beganAtIso } });
  });

  test.each([
    ['2026-05-01T08:00:05.000Z', '2026-05-01T08:00:05.000Z'],
    ['2026-05-01T08:41:05.000Z', '2026-05-01T08:41:05.000Z'],
  ])('a beginning that nobody chose is the moment at which it is asked for: %s', (now, began) => {
    const draft = beginDraft(pears);
    const read = statedFromDraft(draft, { draft, sugarG: pears.sugarG, beganAtIso: now });
    expect(read).toMatchObject({ ok: true, value: { beganAtIso: began } });
  });

  test.each([
    ['began', '', 'A day and a time, please.'],
    ['volumeMl', '-1', 'A volume in mL, more than 0.'],
    ['tableSugarG', 'much', 'A number of grams, more than 0, or nothing.'],
    ['name', ' ', 'A name, please.'],
  ])('%s as “%s” is refused at its field', (field, text, words) => {
    const read = corrected(pears, { [field]: text });
    expect(read.ok ? {} : read.error).toEqual({ [field]: words });
  });
});
