import { expect, test } from 'vitest';
import { counted } from '../../../shared-core/wording/counted.ts';

test('one is one, everything else is many, as a number or as it was typed', () => {
  expect(
    [counted(1, 'mark'), counted(0, 'mark'), counted(2, 'mark'), counted('1', 'plate')].concat(
      counted('1.5', 'plate'),
    ),
  ).toEqual(['1 mark', '0 marks', '2 marks', '1 plate', '1.5 plates']);
});
