import { type ZipEntry, zipStream } from '../zip-stream.ts';
import { chartXml, drawingXml } from './chart-xml.ts';
import {
  contentTypesXml,
  corePropertiesXml,
  linksXml,
  packageLinks,
  workbookLinks,
  workbookXml,
} from './package-parts.ts';
import { sheetXml } from './sheet-xml.ts';
import { stylesXml } from './styles.ts';
import type { Workbook } from './workbook.ts';

/**
 * A workbook as the bytes of an XLSX file, in pieces. By hand rather than by a package, since it needs three things at once: line
 * charts, sheets that are never in memory as a whole, and the same bytes for the same runs.
 */
export function writeWorkbook(workbook: Workbook): AsyncGenerator<Uint8Array> {
  return zipStream(parts(workbook), workbook.createdMs);
}

function* parts(workbook: Workbook): Generator<ZipEntry> {
  yield part('[Content_Types].xml', contentTypesXml(workbook));
  yield part('_rels/.rels', linksXml(packageLinks));
  yield part('docProps/core.xml', corePropertiesXml(workbook));
  yield part('xl/workbook.xml', workbookXml(workbook));
  yield part('xl/_rels/workbook.xml.rels', linksXml(workbookLinks(workbook)));
  yield part('xl/styles.xml', stylesXml);
  for (const [index, sheet] of workbook.sheets.entries()) {
    const number = index + 1;
    let rowCount = 0;
    const counted = function* (): Generator<string> {
      rowCount = yield* sheetXml(sheet);
    };
    yield { path: `xl/worksheets/sheet${number}.xml`, content: counted() };
    if (sheet.chart === undefined) continue;
    yield part(
      `xl/worksheets/_rels/sheet${number}.xml.rels`,
      linksXml([['drawing', `../drawings/drawing${number}.xml`]]),
    );
    yield part(`xl/drawings/drawing${number}.xml`, drawingXml(sheet));
    yield part(
      `xl/drawings/_rels/drawing${number}.xml.rels`,
      linksXml([['chart', `../charts/chart${number}.xml`]]),
    );
    yield part(`xl/charts/chart${number}.xml`, chartXml(sheet, sheet.chart, Math.max(1, rowCount)));
  }
}

const part = (path: string, xml: string): ZipEntry => ({ path, content: [xml] });
