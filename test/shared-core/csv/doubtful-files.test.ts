import { describe, expect, test } from 'vitest';
import { explainCsvProblem, type ReadCsv, readReadingsCsv } from '#shared-core';

function read(csv: string, mapping?: Parameters<typeof readReadingsCsv>[1]): ReadCsv {
  const answer = readReadingsCsv(csv, mapping);
  if (!answer.ok) throw new Error(explainCsvProblem(answer.error));
  return answer.value;
}

/** A file with these times and a steady temperature beside each. */
const timed = (title: string, times: readonly string[]) =>
  `${title},head_degC\n${times.map((time) => `${time},21.5\n`).join('')}`;
const timesIn = (csv: string) => read(csv).inputs.map(({ timeS }) => timeS);

const minutesRemark =
  'The times were read as minutes and seconds. If they are hours and minutes, write "(h:mm)" behind the title of their column.';
const hoursRemark =
  'The times were read as hours and minutes. If they are minutes and seconds, write "(mm:ss)" behind the title of their column.';

describe('clock times of two parts', () => {
  test.each<[string, string, readonly string[], readonly number[], readonly string[]]>([
    ['what the title says', 'Time (mm:ss)', ['00:00', '00:02', '01:07'], [0, 2, 67], []],
    ['what the title says of hours', 'Time [h:mm]', ['0:00', '0:02', '1:07'], [0, 120, 4020], []],
    ['h:mm:ss with its hours left out', 'Time', ['0:05', '0:07', '1:00:00'], [5, 7, 3600], []],
    ['minutes beyond a day of hours', 'Time', ['0:00', '0:20', '24:00'], [0, 20, 1440], []],
    ['the time of a day', 'Time', ['10:58', '10:59', '11:01'], [0, 60, 180], []],
    ['fractions of seconds', 'Time', ['00:00.0', '00:02.5'], [0, 2.5], []],
    ['even steps from zero', 'Time', ['00:00', '00:02', '00:04'], [0, 2, 4], [minutesRemark]],
    ['uneven steps from zero', 'Time', ['0:00', '0:10', '1:12'], [0, 600, 4320], [hoursRemark]],
  ])('are read by %s', (_, title, times, expected, remarks) => {
    const csv = timed(title, times);
    expect(timesIn(csv)).toEqual(expected);
    expect(read(csv).remarks).toEqual(remarks);
  });

  test('are read as the mapping or a row of units under the titles says', () => {
    const mapping = {
      time: { column: 1, unit: 'mm:ss' },
      channels: [{ column: 2, channel: 'head', unit: '°C' }],
    } as const;
    const byMapping = read('a,b\n0:00,20\n0:30,21\n', {
      ...mapping,
      channels: [...mapping.channels],
    });
    expect(byMapping).toMatchObject({ endS: 30, remarks: [] });
    expect(read('Time,Head\nmm:ss,°C\n0:00,20\n0:30,21\n')).toMatchObject({
      endS: 30,
      remarks: [],
    });
  });
});

describe('times that are none', () => {
  test('an absurd number neither becomes the start nor moves the other times', () => {
    const { inputs, rejectedRows } = read(timed('time_s', ['1e308', '0', '2', '1e15', '4']));
    expect(inputs.map(({ timeS }) => timeS)).toEqual([0, 2, 4]);
    expect(rejectedRows).toEqual([
      { line: 2, reason: '"1e308" is no time' },
      { line: 5, reason: '"1e15" is no time' },
    ]);
  });

  test('a date among seconds, or seconds among dates, is reported instead of mixed in', () => {
    expect(read(timed('time_s', ['0', '1741947300', '2'])).rejectedRows).toEqual([
      { line: 3, reason: 'the time "1741947300" is a date, but the times above it are not' },
    ]);
    const dated = read(timed('time_s', ['1741947300', '5', '1741947310', '0:00:20']));
    expect(dated.inputs.map(({ timeS }) => timeS)).toEqual([0, 10]);
    expect(dated.rejectedRows.map(({ reason }) => reason)).toEqual([
      'the time "5" is a number of seconds, but the times above it are not',
      'the time "0:00:20" is a clock time, but the times above it are not',
    ]);
  });
});

describe('what the file leaves open', () => {
  test('of two temperatures without a place, it names the one taken for the head', () => {
    expect(read('time_s,T1 (°C),T2 (°C)\n0,20,50\n1,20,51\n').remarks).toEqual([
      '"T1 (°C)" (column 2) was taken for the head temperature, but "T2 (°C)" (column 3) might be it as well. Give the right one the title "head_degC", or name it with --columns.',
    ]);
    expect(read('time_s,T1 (°C),pot (°C)\n0,20,50\n1,20,51\n').remarks).toEqual([]);
    expect(read('time_s,head,T2 (°C)\n0,20,50\n1,20,51\n').remarks).toEqual([]);
  });

  test('temperatures without a unit that settle where only °F can are called so', () => {
    const rows = (title: string, values: readonly number[]) =>
      `time_s,${title}\n${values.map((value, index) => `${index},${value}\n`).join('')}`;
    const fahrenheit = [70, 71, 80, 140, 172.1, 172.4, 172.6];
    const { remarks } = read(rows('head', fahrenheit));
    expect(remarks).toEqual([
      'The head temperatures have no unit and were read as °C, but they look like °F: name the unit in the title, as in "head (°F)".',
    ]);
    expect(read(rows('head (°F)', fahrenheit)).remarks).toEqual([]);
    const celsius = [21, 22, 40, 78, 78.2, 78.3, 99];
    expect(read(rows('head', celsius)).remarks).toEqual([]);
    // A broken wire says nothing about the unit.
    expect(read(rows('head', [...celsius, 850, 850, 850])).remarks).toEqual([]);
  });
});

test('compound titles say which thermometer they name, whatever the order of the columns', () => {
  const read = readReadingsCsv(
    'Zeit (s);Kolbentemperatur;Kopftemperatur\n0;95,1;20,5\n10;95,2;20,6\n',
  );
  expect(read.ok && read.value.channels.map(({ channel }) => channel)).toEqual(['pot', 'head']);
});

test('how warm the distillate is says nothing of how much there is', () => {
  const read = readReadingsCsv(
    'time_s,head (°C),Distillate temperature (°C),Destillat (cm³)\n0,78,21,0\n10,78.2,22,1.5\n',
  );
  expect(read.ok && read.value.channels.map(({ channel, unit }) => [channel, unit])).toEqual([
    ['head', '°C'],
    ['distillate-temperature', '°C'],
    ['receiver', 'mL'],
  ]);
});

test.each([
  ['Zeit,Siedetemperatur', ['head']],
  ['Zeit,Temperatur1', ['head']],
  ['t,T_Kolben,T_Kopf', ['pot', 'head']],
  ['Zeit,Blasentemperatur,TKopf', ['pot', 'head']],
  ['Time,Pot Temperature,Headtemp', ['pot', 'head']],
])('titles without a unit are understood: %s', (titles, channels) => {
  const width = titles.split(',').length - 1;
  const row = (timeS: number) => [timeS, ...Array(width).fill(20.5)].join(',');
  const read = readReadingsCsv(`${titles}\n${row(0)}\n${row(10)}\n`);
  expect(read.ok && read.value.channels.map(({ channel }) => channel)).toEqual(channels);
});

describe('remarks of a logger', () => {
  const table = (title: string) =>
    [
      `Time (s);Head (°C);${title}`,
      '0;20,5;',
      '60;40,1;first drop; seen late',
      '120;78,2;smells of pear',
      '180;78,3;smells of pear',
      '240;78,3;',
      '300;78,4;smells of pear',
    ].join('\n');
  const notesIn = (text: string, mapping?: Parameters<typeof readReadingsCsv>[1]) => {
    const read = readReadingsCsv(text, mapping);
    if (!read.ok) throw new Error(read.error.kind);
    return {
      notes: read.value.inputs.flatMap((input) =>
        input.kind === 'mark' && input.mark.type === 'note'
          ? [[input.timeS, input.markId, input.mark.text]]
          : [],
      ),
      rejected: read.value.rejectedRows,
    };
  };
  const expected = {
    notes: [
      [60, 1, 'first drop'],
      [120, 2, 'smells of pear'],
      [300, 3, 'smells of pear'],
    ],
    rejected: [],
  };

  test.each(['Remarks', 'Bemerkungen', 'comment', 'Notizen'])(
    'in a column titled %s become notes at their time, once each',
    (title) => {
      expect(notesIn(table(title))).toEqual(expected);
    },
  );

  test('in a column that only the person knows become notes too', () => {
    expect(
      notesIn(table('Spalte 3'), {
        time: { column: 1 },
        channels: [{ column: 2, channel: 'head', unit: '°C' }],
        notes: 3,
      }),
    ).toEqual(expected);
  });

  test('as long as a book keep the length of a note', () => {
    const { notes } = notesIn(`time_s,head_degC,notes\n0,20,${'a'.repeat(5000)}\n`);
    expect(String(notes[0]?.[2])).toHaveLength(2000);
  });
});
