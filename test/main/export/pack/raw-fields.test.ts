import { expect, test } from 'vitest';
import { rawFields } from '../../../../main/export/pack/raw-fields.ts';
import { goodReading } from '../../../support/good-reading.ts';

const read = (timeS: number, channel: string, value: number, rest: object = {}) =>
  goodReading(timeS, value, { channel, ...rest });
test('the columns of a raw table say what each holds', () => {
  const fields = rawFields([read(0, 'head', 20), read(0, 'receiver', 40, { unit: 'g' })]);
  expect(fields.map(({ name, type, unit }) => [name, type, unit])).toEqual(
    expect.arrayContaining([
      ['time_s', 'number', 's'],
      ['head_degC', 'number', 'Cel'],
      ['head_quality', 'string', null],
      ['receiver_g', 'number', 'g'],
      ['marks', 'string', null],
    ]),
  );
  expect(fields.find(({ name }) => name === 'head_degC')?.description).toBe(
    'Reading of head, as recorded, uncorrected',
  );
  expect(fields.find(({ name }) => name === 'head_quality')?.description).toBe(
    'Quality of the reading of head: good, suspect or bad',
  );
});
