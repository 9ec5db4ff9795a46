import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  explainCsvProblem,
  type Reading,
  type RunInput,
  readReadingsCsv,
  type StageSpan,
  writeReadingsCsv,
} from '#shared-core';
import type { CsvProblem } from '../../../shared-core/csv/read-readings-csv.ts';

const reading = (timeS: number, value: number, channel = 'head'): Reading => ({
  kind: 'reading',
  timeS,
  channel,
  value,
  unit: '°C',
  quality: 'good',
});

function readingsIn(csv: string): readonly RunInput[] {
  const read = readReadingsCsv(csv);
  if (!read.ok) throw new Error(explainCsvProblem(read.error));
  return read.value.inputs;
}

const twoReadings = [reading(0, 21.5), reading(10, 22.25)];

describe('readReadingsCsv', () => {
  test.each<[string, string]>([
    ['seconds and degrees', 'time_s,head_C\n0,21.5\n10,22.25\n'],
    [
      'a byte order mark and CR LF',
      '\ufefftime (s),Head temperature (°C)\r\n0,21.5\r\n10,22.25\r\n',
    ],
    ['old Macintosh line ends', 'time_s,head_C\r0,21.5\r10,22.25\r'],
    ['semicolons and decimal commas', 'Zeit (s);Kopf (°C)\n0;21,5\n10;22,25\n'],
    ['tabs', 'Elapsed [s]\tTemp [°C]\n0\t21.5\n10\t22.25\n'],
    ['quoted decimal commas', '"t","T"\n"0","21,5"\n"10","22,25"\n'],
    ['no titles', '0,21.5\n10,22.25\n'],
    ['minutes', 'Time (min),Vapour\n0,21.5\n0.16666666666666666,22.25\n'],
    ['clock times', 'Time,Temperature\n14:05:10,21.5\n14:05:20,22.25\n'],
    ['clock times over midnight', 'Time,Temperature\n23:59:55,21.5\n00:00:05,22.25\n'],
    ['elapsed h:mm:ss', 'Time,Temperature\n0:00:00,21.5\n0:00:10,22.25\n'],
    ['afternoon hours', 'Time,Temperature\n11:59:55 AM,21.5\n12:00:05 PM,22.25\n'],
    ['ISO 8601', 'timestamp,head\n2025-03-14T10:15:00Z,21.5\n2025-03-14T10:15:10Z,22.25\n'],
    ['day-first dates', 'Date Time,head\n14.03.2025 10:15:00,21.5\n14.03.2025 10:15:10,22.25\n'],
    ['month-first dates', 'Date Time,head\n3/14/2025 10:15:00,21.5\n3/14/2025 10:15:10,22.25\n'],
    [
      'a date beside the clock',
      'Date,Time,T1\n14.03.2025,10:15:00,21.5\n14.03.2025,10:15:10,22.25\n',
    ],
    ['seconds since 1970', 'time_s,T\n1741947300,21.5\n1741947310,22.25\n'],
    ['Fahrenheit', 'time_s,head (°F)\n0,70.7\n10,72.05\n'],
    ['kelvin', 'time_s,head (K)\n0,294.65\n10,295.4\n'],
    ['remarks above the titles', 'Logger 3000\nRate, 10\n\ntime_s,head\n0,21.5\n10,22.25\n'],
    ['a row of units', 'Time,Head\ns,°C\n0,21.5\n10,22.25\n'],
    ['units in the cells', 'time,head\n0,21.5 °C\n10,22.25 °C\n'],
    ['a running number first', 'No,Time (s),Head (°C)\n1,0,21.5\n2,10,22.25\n'],
  ])('reads %s', (_, csv) => {
    const head = readingsIn(csv).filter(
      (input) => input.kind === 'reading' && input.channel === 'head',
    );
    expect(
      head.map((input) => ({ ...input, value: Math.round((input as Reading).value * 1e6) / 1e6 })),
    ).toEqual(twoReadings);
  });

  test('gives further columns their channels and units, and keeps those it does not know', () => {
    const csv =
      'time_s,Pot (°C),Vapour (°C),Condenser out (°C),Balance (g),Pressure (hPa),Jacket (°C),pH\n' +
      '0,20,21,12,0.5,1013.25,19,7\n';
    expect(
      readingsIn(csv).map((input) => {
        const { channel, value, unit } = input as Reading;
        return `${channel} ${value} ${unit}`;
      }),
    ).toEqual([
      'pot 20 °C',
      'head 21 °C',
      'condenser-outlet 12 °C',
      'receiver 0.5 g',
      'air-pressure 101.325 kPa',
      'jacket 19 °C',
      'ph 7 1',
    ]);
  });

  test('takes gaps for gaps and reports every value and row it cannot use by its line', () => {
    const csv = [
      'time_s;head (°C);pot (°C)',
      '0;20,5;30',
      '1;;30,5',
      '2;NaN;31',
      'later;21;31',
      '3;21,x;31',
      '',
      '2;22;31',
      '4;22;',
    ].join('\n');
    const read = readReadingsCsv(csv);
    expect(read.ok && read.value.rejectedRows).toEqual([
      { line: 4, reason: 'no value in the column "head (°C)" ("NaN")' },
      { line: 5, reason: '"later" is no time' },
      { line: 6, reason: '"21,x" in the column "head (°C)" is not a number' },
      { line: 8, reason: 'the time goes back to 2' },
    ]);
    expect(
      read.ok && read.value.inputs.map((input) => `${input.timeS} ${(input as Reading).channel}`),
    ).toEqual(['0 head', '0 pot', '1 pot', '2 pot', '3 pot', '4 head']);
  });

  test('keeps impossible and power-on values as such', () => {
    const csv = 'time_s,head_C\n0,85\n1,21\n2,-127\n3,400\n4,21\n5,85\n';
    expect(readingsIn(csv).map((input) => (input as Reading).quality)).toEqual([
      'suspect',
      'good',
      'bad',
      'bad',
      'good',
      'suspect',
    ]);
  });

  test.each<[string, string, CsvProblem['kind']]>([
    ['nothing', '', 'empty'],
    ['blank lines', '\n\n \n', 'empty'],
    ['bytes', 'PK\u0003\u0004\0\0\0', 'not-text'],
    ['prose', 'Dear all,\nthe run went well.\n', 'no-time-column'],
    ['no temperature', 'time_s,pot_C\n0,20\n', 'no-head-column'],
    ['only rejected rows', 'time_s,head_C\n5,nan\n6,3x\n', 'no-readings'],
  ])('refuses %s in words', (_, csv, kind) => {
    const read = readReadingsCsv(csv);
    expect(read.ok ? null : read.error.kind).toBe(kind);
    expect(read.ok ? '' : explainCsvProblem(read.error)).toMatch(/\.$/);
  });

  test('survives any text without throwing', () => {
    const piece = fc.oneof(
      fc.string({ maxLength: 30 }),
      fc.constantFrom('"', ',', ';', '\n', '\r\n', '0', '1,5', 'time_s', 'head', '\t'),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
        readReadingsCsv(pieces.join(''));
      }),
      { numRuns: 2000, seed: 11 },
    );
  });

  test('reads a line of a million fields and an unclosed quote in bounded work', () => {
    const wide = `time_s,head_C\n0,20\n${'1,'.repeat(1_000_000)}\n2,"21\n3,22\n`;
    const read = readReadingsCsv(wide);
    expect(read.ok && read.value.rejectedRows.map(({ line }) => line)).toEqual([4]);
    expect(read.ok && read.value.inputs.map(({ timeS }) => timeS)).toEqual([0, 1, 3]);
  });
});

describe('writeReadingsCsv', () => {
  test('puts what reached the log out of turn where it belongs in time, and nothing is lost on the way back', () => {
    const mark = (timeS: number, markId: number): RunInput => ({
      kind: 'mark',
      timeS,
      markId,
      mark: { type: 'heat-off' },
    });
    const logged = [reading(1, 78), reading(4, 78.5), mark(2.5, 1), mark(6, 2), reading(5, 79)];
    const csv = [...writeReadingsCsv({ inputs: logged, stages: null, endS: 6 }, 'csv')].join('');
    const read = readReadingsCsv(csv);
    expect(read).toMatchObject({ ok: true, value: { rejectedRows: [] } });
    expect(readingsIn(csv)).toEqual([logged[0], logged[2], logged[1], logged[4], logged[3]]);
  });

  const inputs: readonly RunInput[] = [
    { kind: 'mark', timeS: 0, markId: 1, mark: { type: 'heat-on' } },
    reading(0, 20.0625),
    reading(0, 60.1, 'pot'),
    { ...reading(1.25, 85), quality: 'suspect' },
    { kind: 'link', timeS: 2, state: 'lost', reason: 'unplugged' },
    { kind: 'link', timeS: 9.5, state: 'back', reason: 'unplugged' },
    reading(10, 60.2, 'pot'),
    reading(10, 78.150000000000006),
    { kind: 'mark', timeS: 10, markId: 2, mark: { type: 'note', text: '=SUM(A1), "so"; 1,5\nmL' } },
    { kind: 'mark', timeS: 10, markId: 3, mark: { type: 'receiver-changed', volumeMl: null } },
    { ...reading(11, 31.5, 'receiver'), unit: 'mL' },
    { ...reading(11, 101.3, 'air-pressure'), unit: 'kPa' },
    { ...reading(11, 0.5, 'stirrer-speed'), unit: '1' },
    reading(12, 30, 'jacket-top'),
  ];
  const stages: readonly StageSpan[] = [
    { stage: 'warm-up', fromS: 0, toS: 9, because: '' },
    { stage: 'tail', fromS: 9, toS: null, because: '' },
  ];

  test.each(['csv', 'csv-semicolon'] as const)(
    'as %s, is read back as the same inputs',
    (format) => {
      const csv = [...writeReadingsCsv({ inputs, stages, endS: 13.5 }, format)].join('');
      const read = readReadingsCsv(csv);
      expect(read.ok && read.value).toMatchObject({ inputs, endS: 13.5, rejectedRows: [] });
    },
  );

  test('puts titles with units first and the stage beside every row', () => {
    const table = { inputs: inputs.slice(0, 4), stages, endS: 13.5 };
    expect([...writeReadingsCsv(table, 'csv')].join('').split('\r\n')).toEqual([
      'time_s,head_degC,head_quality,pot_degC,pot_quality,stage,marks',
      '0,,,,,warm-up,heat-on',
      '0,20.0625,good,60.1,good,warm-up,',
      '1.25,85,suspect,,,warm-up,',
      '13.5,,,,,tail,run-ended',
      '',
    ]);
  });

  test('is read back as well where a spreadsheet has left out the empty cells at the ends of rows', () => {
    const full = [...writeReadingsCsv({ inputs, stages, endS: 13.5 }, 'csv')].join('');
    const ragged = full.replaceAll(/,+\r\n/g, '\r\n');
    expect(ragged).not.toBe(full);
    const read = readReadingsCsv(ragged);
    expect(read.ok && read.value).toMatchObject({ inputs, endS: 13.5, rejectedRows: [] });
    // What begins later in the run is in no cell of the first rows.
    expect(readingsIn('time_s,head_C,pot_C\n0,21.5\n10,22.25,60\n')).toEqual([
      ...twoReadings,
      reading(10, 60, 'pot'),
    ]);
  });

  test('has no end while the run is under way', () => {
    const table = { inputs: twoReadings, stages: null, endS: null };
    const csv = [...writeReadingsCsv(table, 'csv')].join('');
    expect(csv).not.toContain('run-ended');
    expect(readingsIn(csv)).toEqual(twoReadings);
  });

  test('has one decimal sign throughout, in the marks too', () => {
    const marks: readonly RunInput[] = [
      { kind: 'mark', timeS: 12, markId: 1, mark: { type: 'volume-read', volumeMl: 12.5 } },
    ];
    const table = { inputs: [...twoReadings, ...marks], stages: null, endS: 13 };
    const csv = [...writeReadingsCsv(table, 'csv-semicolon')].join('');
    expect(csv).not.toMatch(/\d\.\d/);
    expect(readingsIn(csv)).toEqual(table.inputs);
  });

  test('has no more digits after a conversion than a probe could tell', () => {
    const inputs = readingsIn('time_s,head (°F)\n0,70.1\n6,70.3\n');
    expect([...writeReadingsCsv({ inputs, stages: null, endS: 6 }, 'csv')].join('')).toContain(
      '\r\n0,21.166667,good,',
    );
  });
});
