import { cautionsAt, cautionWords } from '#shared-core';
import type { PackedRun, PackKind } from './pack-kind.ts';
import type { TableField } from './table.ts';

/** A file with the columns of its table, if it holds one. */
export interface DescribedFile {
  readonly path: string;
  readonly table?: { readonly fields: readonly TableField[] };
}

function columnLines({ path, table }: DescribedFile): readonly string[] {
  if (table === undefined || !path.startsWith('data/')) return [];
  return [
    '',
    path,
    ...table.fields.map(
      ({ name, unit, description }) =>
        `  ${name}${unit === null ? '' : ` [${unit}]`}: ${description}`,
    ),
  ];
}

/** What is what, for whoever opens the pack years later. */
export function readMe<Study extends PackedRun>(
  { readMe: words }: Pick<PackKind<Study>, 'readMe'>,
  studies: readonly Study[],
  files: readonly DescribedFile[],
): string {
  const runs = studies.map((study) => {
    const remarks = words.remarksOn(study).map((remark) => `  (${remark})`);
    return `  ${study.runId}  ${study.name}${remarks.join('')}`;
  });
  return [
    words.title,
    '',
    ...runs,
    '',
    ...words.files(studies.length > 1),
    '',
    ...words.remarks,
    ...cautionsAt(words.cautions).map(cautionWords),
    '',
    'Columns of the tables in data/ (data-semicolon/ has the same)',
    ...files.flatMap(columnLines),
    '',
    ...files.map(({ path }) => path),
    '',
  ].join('\r\n');
}
