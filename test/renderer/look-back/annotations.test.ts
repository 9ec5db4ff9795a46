import { expect, test } from 'vitest';
import { annotationsIn, withAnnotation } from '../../../renderer/look-back/annotations.ts';

test('an annotation is a line of the notes that begins with its run time, and is found again', () => {
  const notes = withAnnotation('A calm run.', { timeS: 1930.4, text: ' first \n drop ' });
  expect(notes).toBe('A calm run.\n0:32:10 first drop');
  expect(annotationsIn(notes)).toEqual([{ timeS: 1930, text: 'first drop' }]);
});

test('notes without a time are notes, not annotations', () => {
  expect(annotationsIn('9:30 in the morning\n1:75:00 no time\n0:10:00 ')).toEqual([]);
});
