import { describe, expect, test } from 'vitest';
import { stageNames } from '../../../renderer/strip/stage-names.ts';
import { stripMeasures } from '../../../renderer/strip/strip-text.ts';

const warm = { fullName: 'Warm-up', shortName: 'Warm-up' };
const first = { fullName: 'Low-boiling first fraction', shortName: 'First' };
const main = { fullName: 'Main ethanol fraction', shortName: 'Main' };
const tail = { fullName: 'Water-rich tail', shortName: 'Tail' };
type Names = typeof first;

/** Stages side by side, each with its width [px], in type of this height. */
function named(textPx: number, ...stages: readonly (readonly [Names, number])[]) {
  const { footPx: height, letterPx } = stripMeasures(textPx);
  let left = 200;
  const rooms = stages.map(([names, width]) => {
    const room = { ...names, left, width };
    left += width;
    return room;
  });
  return stageNames(rooms, { height, letterPx, textPx }).map(
    (name) => name && `${name.text}${name.isUpright ? '' : ' ↑'}`,
  );
}

/** On a class screen of 1920×1080. */
const classPx = 0.044 * 1080;

describe('names of the stages along the foot of the strip', () => {
  test('are whole where they fit, else short, else on their side', () => {
    expect(named(15, [warm, 90], [first, 20], [main, 300], [tail, 50])).toEqual([
      'Warm-up',
      'First ↑',
      'Main ethanol fraction',
      'Tail',
    ]);
  });

  test('stand in a stage narrower than their letters too, over what the neighbours leave bare', () => {
    // Two minutes of two hours.
    expect(named(classPx, [warm, 300], [first, 27], [main, 900])).toEqual([
      'Warm-up',
      'First ↑',
      'Main ethanol fraction',
    ]);
  });

  test('are cut to the height of the foot, with a full stop, in whatever language', () => {
    const german = { fullName: 'Leichtsiedender Vorlauf', shortName: 'Vorlauf' };
    expect(named(classPx, [warm, 60], [german, 60], [main, 900])).toEqual([
      'Warm. ↑',
      'Vorl. ↑',
      'Main ethanol fraction',
    ]);
  });

  test('never stand on one another: where two stages are narrow the earlier is named', () => {
    expect(named(classPx, [warm, 300], [first, 27], [main, 24])).toEqual([
      'Warm-up',
      'First ↑',
      null,
    ]);
    expect(named(classPx, [warm, 300], [first, 16])).toEqual(['Warm-up', null]);
  });
});
