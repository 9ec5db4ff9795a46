import { escapeXml } from '#shared-core';
import type { Workbook } from './workbook.ts';
import { xmlHead } from './xml.ts';

const officeTypes = 'application/vnd.openxmlformats-officedocument';
const officeLinks = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** Links from one part to others, in order rId1, rId2 … Source: ECMA-376, part 2. */
export function linksXml(links: readonly (readonly [type: string, target: string])[]): string {
  const each = links.map(
    ([type, target], index) =>
      `<Relationship Id="rId${index + 1}" Type="${type.includes(':') ? type : `${officeLinks}/${type}`}" Target="${target}"/>`,
  );
  return `${xmlHead}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${each.join('')}</Relationships>`;
}

export const packageLinks: readonly (readonly [string, string])[] = [
  ['officeDocument', 'xl/workbook.xml'],
  [
    'http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties',
    'docProps/core.xml',
  ],
];

export function contentTypesXml({ sheets }: Workbook): string {
  const parts = [
    ['/xl/workbook.xml', `${officeTypes}.spreadsheetml.sheet.main+xml`],
    ['/xl/styles.xml', `${officeTypes}.spreadsheetml.styles+xml`],
    ['/docProps/core.xml', 'application/vnd.openxmlformats-package.core-properties+xml'],
    ...sheets.flatMap(({ chart }, index) => {
      const number = index + 1;
      const own = [
        `/xl/worksheets/sheet${number}.xml`,
        `${officeTypes}.spreadsheetml.worksheet+xml`,
      ];
      if (chart === undefined) return [own];
      return [
        own,
        [`/xl/drawings/drawing${number}.xml`, `${officeTypes}.drawing+xml`],
        [`/xl/charts/chart${number}.xml`, `${officeTypes}.drawingml.chart+xml`],
      ];
    }),
  ];
  return (
    `${xmlHead}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">` +
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
    '<Default Extension="xml" ContentType="application/xml"/>' +
    `${parts.map(([name, type]) => `<Override PartName="${name}" ContentType="${type}"/>`).join('')}</Types>`
  );
}

export function workbookXml({ sheets }: Workbook): string {
  const each = sheets.map(
    ({ name }, index) =>
      `<sheet name="${escapeXml(name)}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`,
  );
  return (
    `${xmlHead}<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${officeLinks}">` +
    `<bookViews><workbookView/></bookViews><sheets>${each.join('')}</sheets></workbook>`
  );
}

export function workbookLinks({ sheets }: Workbook): readonly (readonly [string, string])[] {
  return [
    ...sheets.map((_, index) => ['worksheet', `worksheets/sheet${index + 1}.xml`] as const),
    ['styles', 'styles.xml'],
  ];
}

/** Title and time; no person is named. */
export function corePropertiesXml({ title, createdMs }: Workbook): string {
  const created = new Date(createdMs).toISOString().slice(0, 19);
  return (
    `${xmlHead}<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" ` +
    'xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" ' +
    `xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><dc:title>${escapeXml(title)}</dc:title>` +
    `<dc:creator>Still Head Monitor</dc:creator><dcterms:created xsi:type="dcterms:W3CDTF">${created}Z</dcterms:created></cp:coreProperties>`
  );
}
