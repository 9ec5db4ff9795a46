import { csvDialects } from '#shared-core';
import { csvDateTimeFormat, type TableField } from './table.ts';

/** A CSV file of a pack, as it lies on disk. */
export interface PackResource {
  readonly name: string;
  readonly path: string;
  readonly title: string;
  readonly format: keyof typeof csvDialects;
  readonly fields: readonly TableField[];
  readonly primaryKey?: readonly string[] | undefined;
  readonly bytes: number;
  /** SHA-256 of the file, hexadecimal. */
  readonly sha256: string;
}

export interface PackDescription {
  readonly name: string;
  readonly title: string;
  readonly createdMs: number;
  readonly version: string;
  readonly description: string;
  readonly resources: readonly PackResource[];
  /** Where its numbers come from. */
  readonly sources: readonly string[];
}

/**
 * The descriptor of a Tabular Data Package: schema, units and dialect of every CSV, with size and hash.
 * Source: Frictionless Data, Data Package v1, Table Schema v1 and CSV Dialect v1; units as UCUM codes in `unit`, a
 * property of our own as the specification allows.
 */
export function dataPackage(pack: PackDescription): Readonly<Record<string, unknown>> {
  return {
    profile: 'tabular-data-package',
    name: pack.name,
    title: pack.title,
    description: pack.description,
    created: new Date(pack.createdMs).toISOString(),
    version: pack.version,
    sources: pack.sources.map((title) => ({ title })),
    // Whoever made the runs decides on a licence; a program can't for them.
    licenses: [{ name: 'notspecified', title: 'Not stated: ask whoever made the runs' }],
    resources: pack.resources.map((resource) => {
      const { delimiter, decimal } = csvDialects[resource.format];
      return {
        profile: 'tabular-data-resource',
        name: resource.name,
        path: resource.path,
        title: resource.title,
        format: 'csv',
        mediatype: 'text/csv',
        encoding: 'utf-8',
        bytes: resource.bytes,
        hash: `sha256:${resource.sha256}`,
        dialect: {
          delimiter,
          lineTerminator: '\r\n',
          quoteChar: '"',
          doubleQuote: true,
          header: true,
          skipInitialSpace: false,
          caseSensitiveHeader: true,
        },
        schema: {
          fields: resource.fields.map((field) => schemaField(field, decimal)),
          missingValues: [''],
          ...keysOf(resource),
        },
      };
    }),
  };
}

/** Every table with a run_id leads to the table of runs in the same dialect. */
function keysOf({ name, fields, primaryKey }: PackResource) {
  const [dialect] = name.split('.');
  const runs = `${dialect}.runs`;
  const leadsToRuns = name !== runs && fields.some((field) => field.name === 'run_id');
  return {
    ...(primaryKey === undefined ? {} : { primaryKey }),
    ...(leadsToRuns
      ? { foreignKeys: [{ fields: 'run_id', reference: { resource: runs, fields: 'run_id' } }] }
      : {}),
  };
}

function schemaField(
  { name, type, unit, description }: TableField,
  decimal: string,
): Readonly<Record<string, unknown>> {
  return {
    name,
    type,
    description,
    ...(unit === null ? {} : { unit }),
    ...(type === 'datetime' ? { format: csvDateTimeFormat } : {}),
    ...(type === 'number' && decimal === ',' ? { decimalChar: ',' } : {}),
  };
}
