import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** One cell as LibreOffice understood it. */
export interface CalcCell {
  /** `float`, `date`, `string` … or null for an empty one. */
  readonly type: string | null;
  readonly value: string;
  readonly isFormula: boolean;
}

/** Where LibreOffice is; loud when it is nowhere. */
export function requireCalc(): void {
  const found = spawnSync('soffice', ['--version'], { encoding: 'utf8' });
  if (found.status === 0) return;
  throw new Error(
    'MISSING: soffice (Debian package libreoffice-calc). Install it: whether spreadsheets open the exports right cannot be checked without.',
  );
}

export interface CalcFile {
  readonly sheets: ReadonlyMap<string, readonly (readonly CalcCell[])[]>;
  /** Charts with two scales that it drew. */
  readonly scatterCharts: number;
}

/**
 * Opens a file as LibreOffice would for somebody with this locale, and says what is in each cell of each sheet:
 * converted to flat XML, in which every cell carries its type and its value in a form of no locale.
 */
export function openInCalc(
  file: string,
  locale: string,
  workFolder: string,
  importFilter?: string,
): CalcFile {
  const profile = path.join(workFolder, `profile-${locale}`);
  mkdirSync(path.join(profile, 'user'), { recursive: true });
  writeFileSync(path.join(profile, 'user', 'registrymodifications.xcu'), localeSetting(locale));
  execFileSync(
    'soffice',
    [
      '--headless',
      `-env:UserInstallation=file://${profile}`,
      ...(importFilter === undefined ? [] : [`--infilter=${importFilter}`]),
      '--convert-to',
      'fods',
      '--outdir',
      workFolder,
      file,
    ],
    { stdio: 'pipe', timeout: 170_000 },
  );
  const name = path.basename(file).replace(/\.[^.]*$/, '.fods');
  const xml = readFileSync(path.join(workFolder, name), 'utf8');
  // A chart carries a table of its own inside its sheet.
  const plain = xml.replace(/<draw:frame[\s\S]*?<\/draw:frame>/g, '');
  const scatterCharts = xml.match(/chart:class="chart:scatter"/g)?.length ?? 0;
  return { sheets: readSheets(plain), scatterCharts };
}

function localeSetting(locale: string): string {
  return (
    '<?xml version="1.0" encoding="UTF-8"?>\n<oor:items xmlns:oor="http://openoffice.org/2001/registry">' +
    '<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse">' +
    `<value>${locale}</value></prop></item></oor:items>\n`
  );
}

function readSheets(xml: string): ReadonlyMap<string, readonly (readonly CalcCell[])[]> {
  const sheets = new Map<string, (readonly CalcCell[])[]>();
  for (const [, name = '', body = ''] of xml.matchAll(
    /<table:table table:name="([^"]*)"[^>]*>([\s\S]*?)<\/table:table>/g,
  )) {
    const rows = [...body.matchAll(/<table:table-row[^>]*>([\s\S]*?)<\/table:table-row>/g)];
    sheets.set(
      name,
      rows.map(([, row = '']) => readCells(row)),
    );
  }
  return sheets;
}

function readCells(row: string): readonly CalcCell[] {
  const cells: CalcCell[] = [];
  for (const [, attributes = '', body = ''] of row.matchAll(
    /<table:table-cell([^>]*?)(?:\/>|>([\s\S]*?)<\/table:table-cell>)/g,
  )) {
    const attribute = (of: string) => new RegExp(`${of}="([^"]*)"`).exec(attributes)?.[1];
    const text = /<text:p>([\s\S]*?)<\/text:p>/.exec(body)?.[1] ?? '';
    const cell = {
      type: attribute('office:value-type') ?? null,
      value: attribute('office:date-value') ?? attribute('office:value') ?? text,
      isFormula: attribute('table:formula') !== undefined,
    };
    const repeated = Math.min(64, Number(attribute('table:number-columns-repeated') ?? 1));
    for (let index = 0; index < repeated; index++) cells.push(cell);
  }
  return cells;
}
