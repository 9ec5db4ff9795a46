import { describe, expect, test } from 'vitest';
import { explainCsvProblem, lookAtCsv, type Reading, readReadingsCsv } from '#shared-core';

/** What was read of a table: `time channel value`. */
function readingsOf(csv: string): readonly string[] {
  const read = readReadingsCsv(csv);
  if (!read.ok) throw new Error(explainCsvProblem(read.error));
  return read.value.inputs
    .filter((input): input is Reading => input.kind === 'reading')
    .map(({ timeS, channel, value }) => `${timeS} ${channel} ${value}`);
}

const headAndPot = ['0 head 68.5', '0 pot 76.5', '1 head 68.6', '1 pot 76.6'];

describe('a table with a row for each value', () => {
  test.each<[string, string]>([
    [
      'and its name in a column',
      'Time,Channel,Value\n0,head,68.5\n0,pot,76.5\n1,head,68.6\n1,pot,76.6\n',
    ],
    [
      'in any order of the columns, its title saying more',
      'value;sensor id;time_s\n68,5;still_head;0\n76,5;flask;0\n68,6;still_head;1\n76,6;flask;1\n',
    ],
    [
      'in German, with units beside the values',
      'Zeit;Größe;Wert;Einheit\n10:00:00;Kopf;68,5;°C\n10:00:00;Sumpf;76,5;°C\n10:00:01;Kopf;68,6;°C\n10:00:01;Sumpf;76,6;°C\n',
    ],
    [
      'without a title that says so, where its names are places of the still',
      'Time,where,Temp (°C)\n0,head,68.5\n0,pot,76.5\n1,head,68.6\n1,pot,76.6\n',
    ],
    [
      'with one thing after the other, in the order of their times',
      'sensor,timestamp,value\nhead,2026-11-27T10:00:00,68.5\nhead,2026-11-27T10:00:01,68.6\npot,2026-11-27T10:00:00,76.5\npot,2026-11-27T10:00:01,76.6\n',
    ],
    [
      'under remarks',
      'Made by hand\nRate, 1\nTime,Channel,Value\n0,head,68.5\n0,pot,76.5\n1,head,68.6\n1,pot,76.6\n',
    ],
  ])('is read %s', (_, csv) => {
    expect(readingsOf(csv)).toEqual(headAndPot);
  });

  test('passes midnight with each thing, one after the other', () => {
    const times = ['23:59:58', '23:59:59', '00:00:00'];
    const of = (name: string) => times.map((time) => `${name},${time},70`).join('\n');
    expect(readingsOf(`sensor,time,value\n${of('head')}\n${of('pot')}\n`)).toEqual(
      [0, 1, 2].flatMap((timeS) => [`${timeS} head 70`, `${timeS} pot 70`]),
    );
  });

  test('begins with its newest row, one thing after the other', () => {
    const rows = [3, 2, 1, 0].flatMap((timeS) => [`head,${timeS},${70 + timeS}`]);
    const pot = [3, 2, 1, 0].flatMap((timeS) => [`pot,${timeS},${80 + timeS}`]);
    expect(
      readingsOf(`sensor,time_s,value\n${[...rows, ...pot].join('\n')}\n`).slice(0, 4),
    ).toEqual(['0 head 70', '0 pot 80', '1 head 71', '1 pot 81']);
  });

  test('names its channels by numbers that go round', () => {
    const rows = [0, 1, 2].flatMap((timeS) => [`${timeS},1,${70 + timeS}`, `${timeS},2,21.5`]);
    const csv = `Time,Channel,Value (°C)\n${rows.join('\n')}\n`;
    expect(readingsOf(csv).slice(0, 2)).toEqual(['0 head 70', '0 channel-2 21.5']);
    const read = readReadingsCsv(csv);
    expect(read.ok && read.value.remarks).toEqual([
      '"Channel 1 (°C)" (column 2) was taken for the head temperature, but "Channel 2 (°C)" (column 3) might be it as well. Give the right one the title "head_degC", or name it with --columns.',
    ]);
  });

  test('may have two values in a row', () => {
    expect(
      readingsOf('Time,Sensor,Temp (°C),pH\n0,head,70,7\n0,pot,80,4\n1,head,71,7\n1,pot,81,4\n'),
    ).toContain('1 pot 81');
  });

  test('is no table with a column of temperatures and one of words', () => {
    const rows = [0, 1, 2].map((timeS) => `${timeS},A-0042,${70 + timeS},OK`);
    expect(readingsOf(`Time,Device,Temp (°C),Status\n${rows.join('\n')}\n`)).toEqual([
      '0 head 70',
      '1 head 71',
      '2 head 72',
    ]);
    // One thing after the other may begin like this: the thermometer's place is not the pot's because a name says so.
    expect(readingsOf('Time,Sensor,Temp (°C)\n0,Pot 3,70\n1,Pot 3,71\n')).toEqual([
      '0 head 70',
      '1 head 71',
    ]);
    // Whole degrees that go up and down are no numbers of channels.
    expect(readingsOf('Time,Sensor,Pot\n0,70,80\n1,71,81\n2,70,82\n3,72,83\n').slice(0, 2)).toEqual(
      ['0 head 70', '0 pot 80'],
    );
  });

  test('with more names than anybody measures is none, however many rows have one of their own', () => {
    const rows = Array.from({ length: 20_000 }, (_, row) => `${row},${row < 90 ? 'A' : row},70`);
    const read = readReadingsCsv(`Time,Name,Value\n${rows.join('\n')}\n`);
    expect(read.ok && read.value.inputs.length).toBe(20_000);
    expect(read.ok && read.value.channels.map(({ channel }) => channel)).toEqual(['head']);
  });

  test('loses no row, and tells of each that cannot be used by its line', () => {
    const read = readReadingsCsv(
      'Time,Channel,Value\n0,head,68.5\n0,pot,76.5\n1,head,hot\n1,pot,76.6\n1,,5\n2,lid,40\n',
    );
    expect(read.ok && read.value.rejectedRows).toEqual([
      { line: 4, reason: '"hot" in the column "head" is not a number' },
    ]);
    expect(read.ok && read.value.inputs.length).toBe(5);
  });

  test('shows the same columns before it is taken as it has then', () => {
    const look = lookAtCsv('Time,Channel,Value\n0,head,68.5\n0,pot,76.5\n1,head,68.6\n');
    expect(look.rows.map(({ cells }) => cells.join('|'))).toEqual([
      'Time|head|pot',
      '0|68.5|',
      '0||76.5',
      '1|68.6|',
    ]);
    const read = readReadingsCsv('Time,Channel,Value\n0,head,68.5\n0,pot,76.5\n1,head,68.6\n', {
      time: { column: 1 },
      channels: [{ column: 3, channel: 'head' }],
    });
    expect(read.ok && read.value.inputs.map(({ timeS }) => timeS)).toEqual([0]);
  });
});
