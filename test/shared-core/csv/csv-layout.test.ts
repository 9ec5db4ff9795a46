import { describe, expect, test } from 'vitest';
import { type CsvLayout, detectLayout } from '../../../shared-core/csv/csv-layout.ts';
import { lookAtCsv } from '../../../shared-core/csv/look-at-csv.ts';
import { parseCsv } from '../../../shared-core/csv/parse-csv.ts';

function layoutOf(text: string): CsvLayout {
  const found = detectLayout([...parseCsv(text, ';')]);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
}
const channels = (text: string) =>
  layoutOf(text).channels.map(
    ({ column, channel, unit }) => `${column} ${channel} ${unit ?? 'no unit'}`,
  );

describe('the columns of a table', () => {
  test('are told by their titles, with the quality beside each, marks and remarks', () => {
    expect(
      layoutOf(
        'time_s;head_degC;head_quality;pot_degC;Remarks;marks\n0;20;good;30;;\n1;20;good;30;;\n',
      ),
    ).toEqual({
      timeColumn: 0,
      perS: 1,
      finerTimeColumns: [],
      twoParts: null,
      dateOrder: 'day-month',
      decimal: null,
      channels: [
        { column: 1, title: 'head_degC', channel: 'head', unit: '°C', qualityColumn: 2 },
        { column: 3, title: 'pot_degC', channel: 'pot', unit: '°C', qualityColumn: null },
      ],
      marksColumn: 5,
      notesColumn: 4,
      firstDataLine: 2,
      headDoubt: [],
      remarks: [],
    });
  });

  test('have names of their own where two would have the same', () => {
    expect(channels('t (s);Head (°C);Head (°C);pH;pH\n0;20;21;7;8\n1;20;21;7;8\n')).toEqual([
      '1 head °C',
      '2 head-2 °C',
      '3 ph no unit',
      '4 ph-2 no unit',
    ]);
  });

  test('hold no readings where they count the rows, or hold text', () => {
    const rows = [0, 1, 2, 3, 4].map((row) => `${row + 1};${10 * row};2${row},5;ok;${row % 2}`);
    expect(channels(`No;t (s);Head (°C);State;Fan\n${rows.join('\n')}\n`)).toEqual([
      '2 head °C',
      '4 fan no unit',
    ]);
    // Of four rows it may be chance.
    expect(channels(`No;t (s);Head (°C);State;Fan\n${rows.slice(0, 4).join('\n')}\n`)).toEqual([
      '0 no no unit',
      '2 head °C',
      '4 fan no unit',
    ]);
  });

  test('that begin later in the run are known by their titles', () => {
    expect(channels('t (s);Head (°C);Pot (°C)\n0;20\n1;20\n2;20;30\n')).toEqual([
      '1 head °C',
      '2 pot °C',
    ]);
  });

  test('may have a row of units below their titles', () => {
    expect(layoutOf('Time;Head\nmin;[°C]\n0;20\n1;21\n')).toMatchObject({
      perS: 60,
      firstDataLine: 3,
      channels: [{ title: 'Head (°C)', unit: '°C' }],
    });
    expect(layoutOf('Time;Head\nmm:ss;°C\n0:10;20\n1:10;21\n')).toMatchObject({
      twoParts: 'mm:ss',
      channels: [{ unit: '°C' }],
    });
    expect(
      layoutOf('Head of the still;remarkable\nTime;Head temperature\n0;20\n1;21\n'),
    ).toMatchObject({
      firstDataLine: 3,
      channels: [{ title: 'Head temperature', unit: null }],
    });
    expect(layoutOf('School;Lab;3\ns;°C\n0;20\n1;21\n').firstDataLine).toBe(3);
  });

  test('begin below remarks that hold numbers', () => {
    expect(layoutOf('Logger;3000\nRate;10;Hz\nt (s);Head (°C)\n0;20\n1;21\n').firstDataLine).toBe(
      4,
    );
  });

  test('need no titles where there are but a time and a temperature', () => {
    expect(layoutOf('0;20,5\n10;20,6\n')).toMatchObject({
      timeColumn: 0,
      firstDataLine: 1,
      decimal: ',',
      channels: [{ column: 1, title: '', channel: 'head', unit: null }],
    });
    expect(channels('t (s);Wert\n0;20\n1;21\n')).toEqual(['1 head no unit']);
  });
});

describe('the head temperature', () => {
  test('is the head’s column, else a temperature’s, and what might be it as well is said', () => {
    expect(layoutOf('t (s);T1;T2;Head\n0;20;21;22\n1;20;21;22\n').headDoubt).toEqual([]);
    const doubtful = layoutOf('t (s);T1;T2\n0;20;21\n1;20;21\n');
    expect(doubtful.headDoubt).toEqual([1, 2]);
    expect(doubtful.channels.map(({ channel }) => channel)).toEqual(['head', 't2']);
    expect(doubtful.remarks).toEqual([
      '"T1" (column 2) was taken for the head temperature, but "T2" (column 3) might be it as well. Give the right one the title "head_degC", or name it with --columns.',
    ]);
    expect(layoutOf('0;20;21;22\n1;20;21;22\n').remarks[0]).toContain(
      'column 2 was taken for the head temperature, but column 3, column 4 might be it as well',
    );
  });

  test('is not found where nothing could be one', () => {
    const found = detectLayout([...parseCsv('t (s);Pot (°C);pH;Flow\n0;20;7;1\n1;20;7;1\n', ';')]);
    expect(found).toEqual({
      ok: false,
      error: { kind: 'no-head-column', titles: ['t (s)', 'Pot (°C)', 'pH', 'Flow'] },
    });
  });
});

describe('the time', () => {
  test('is the column that says so with a unit, else any that says so, else what can be nothing but times', () => {
    expect(layoutOf('Time;t (s);Head\n10:15:00;0;20\n10:15:01;1;21\n').timeColumn).toBe(1);
    expect(layoutOf('Head;Clock\n20;10:15:00\n21;10:15:01\n').timeColumn).toBe(1);
    expect(layoutOf('Head;when it was\n20;10:15:00\n21;10:15:01\n').timeColumn).toBe(1);
    expect(layoutOf('Head;stamp\n20;1741947300\n21;1741947310\n').timeColumn).toBe(1);
    expect(layoutOf('Head;s\n20;0\n21;1\n').timeColumn).toBe(1);
    expect(layoutOf('Date;Head\n14.03.2026 10:15;20\n14.03.2026 10:16;21\n').timeColumn).toBe(0);
  });

  test('beside a unit of time a T is the temperature', () => {
    expect(layoutOf('min;T\n0;20\n1;21\n')).toMatchObject({
      timeColumn: 0,
      perS: 60,
      channels: [{ column: 1, channel: 'head' }],
    });
    expect(layoutOf('t;T\n0;20\n1;21\n').channels).toMatchObject([{ column: 1, channel: 'head' }]);
  });

  test('may be in a spreadsheet’s days', () => {
    expect(layoutOf('Time;Head\n46000,5;20\n46000,501;21\n').perS).toBe(86_400);
    expect(layoutOf('Time;Head\n0,5;20\n1,5;21\n').perS).toBe(1);
  });

  test('may stand in several columns, each in a sixtieth of the one before', () => {
    const rows = ['0;59;50;20', '1;0;0;21', '1;0;10;22'];
    expect(layoutOf(`h;min;s;Head\n${rows.join('\n')}\n`)).toMatchObject({
      timeColumn: 0,
      perS: 3600,
      finerTimeColumns: [1, 2],
      channels: [{ column: 3, channel: 'head' }],
    });
    expect(layoutOf('s;min;Head\n50;0;20\n0;1;21\n10;1;22\n')).toMatchObject({
      timeColumn: 1,
      perS: 60,
      finerTimeColumns: [0],
    });
    // The same time in two units is no time in two parts.
    expect(layoutOf('min;s;Head\n0;0;20\n0,5;30;21\n1;60;22\n').finerTimeColumns).toEqual([]);
    expect(layoutOf('min;s;Head\n1;0;20\n1;0;21\n1;0;22\n').finerTimeColumns).toEqual([]);
    // The newest row on top.
    expect(layoutOf('min;s;Head\n1;10;22\n1;0;21\n0;50;20\n').finerTimeColumns).toEqual([1]);
    expect(layoutOf('min;s;Head\n0;10;22\n1;50;21\n1;20;20\n').finerTimeColumns).toEqual([]);
  });

  test('goes on in finer columns that begin anew after the first rows only', () => {
    const rows = (perS: number, count: number, titles: string, cells: (timeS: number) => string) =>
      `${titles}\n${Array.from({ length: count }, (_, row) => `${cells(row * perS)};20`).join('\n')}\n`;
    const minutes = (timeS: number) => `${Math.floor(timeS / 60)};${timeS % 60}`;
    const hours = (timeS: number) => `${Math.floor(timeS / 3600)};${minutes(timeS % 3600)}`;
    const finer = (text: string) => lookAtCsv(text, ';').layout?.finerTimeColumns;
    expect(finer(rows(0.25, 600, 'min;s;Head', minutes))).toEqual([1]);
    expect(finer(rows(1, 4000, 'h;min;s;Head', hours))).toEqual([1, 2]);
    // Of a table that ends before.
    expect(finer(rows(0.25, 100, 'min;s;Head', minutes))).toEqual([1]);
    expect(finer(rows(1, 40, 'h;min;s;Head', hours))).toEqual([1, 2]);
    // The same time in two units, which parts after the first rows only.
    const both = (timeS: number) => `${Math.floor(timeS / 60)};${timeS}`;
    expect(finer(rows(0.5, 200, 'min;s;Head', both))).toEqual([]);
  });

  test('is a date with its hour beside a T in plain numbers', () => {
    expect(channels('Datum;T\n27.11.2026 11:20;20\n27.11.2026 11:21;21\n')).toEqual([
      '1 head no unit',
    ]);
    expect(channels(';T\n0 days 00:00:01;20\n0 days 00:00:02;21\n')).toEqual(['1 head no unit']);
  });

  test('has titles behind the sign of a remark', () => {
    expect(channels('# by hand\n# t [s];head [°C]\n0;20\n1;21\n')).toEqual(['1 head °C']);
  });

  test('is not found where there is none', () => {
    expect(detectLayout([...parseCsv('Head;Pot\n20;30\n21;31\n', ';')])).toEqual({
      ok: false,
      error: { kind: 'no-time-column', titles: ['Head', 'Pot'] },
    });
    expect(detectLayout([])).toEqual({ ok: false, error: { kind: 'empty' } });
  });
});

describe('a table by volume', () => {
  test('has no time, its volume before the temperature, and says what is left out', () => {
    const found = layoutOf('Head (°C);Volume (mL);Receiver\n78;0;1\n78,5;10;1\n');
    expect(found).toMatchObject({ timeColumn: null, firstDataLine: 2 });
    expect(found.channels.map(({ channel, unit, column }) => [channel, unit, column])).toEqual([
      ['receiver', 'mL', 1],
      ['head', '°C', 0],
    ]);
    expect(found.remarks).toEqual([
      'The table has no times; it is taken by the volume in "Volume (mL)". What needs a time (stages, calls, duration) is left out.',
    ]);
    expect(layoutOf('ml;T\n0;78\n10;78,5\n')).toMatchObject({
      timeColumn: null,
      channels: [{ channel: 'receiver' }, { channel: 'head', column: 1 }],
    });
  });

  test('is none where there is a time beside the volume', () => {
    expect(layoutOf('t (s);Volume (mL);Head\n0;0;78\n10;5;78,5\n')).toMatchObject({
      timeColumn: 0,
      channels: [{ channel: 'receiver' }, { channel: 'head' }],
    });
  });

  test('takes of two volumes the one that never falls', () => {
    const found = layoutOf('Flow (mL);Total (mL);Head\n3;3;78\n2;5;78\n4;9;79\n');
    expect(found.channels[0]).toMatchObject({ column: 1, channel: 'receiver' });
  });
});

describe('a look at a file', () => {
  test('shows its first eighty rows, its delimiter and where the data begin', () => {
    const rows = Array.from({ length: 200 }, (_, row) => `${row},2${row % 10}`);
    const look = lookAtCsv(`time_s,head_degC\n${rows.join('\n')}\n`);
    expect([look.delimiter, look.rows.length, look.firstDataLine]).toEqual([',', 80, 2]);
    expect(look.layout?.timeColumn).toBe(0);
  });

  test('of which no column can be told has data from the first row with two numbers on', () => {
    const look = lookAtCsv('Pot (°C);pH;Flow;T\n20;;;x\n20;7;1;x\n20;7;1;x\n', ';');
    expect([look.layout, look.firstDataLine]).toEqual([null, 3]);
    expect(lookAtCsv('nothing;here\n', ';')).toMatchObject({ layout: null, firstDataLine: 1 });
  });
});
