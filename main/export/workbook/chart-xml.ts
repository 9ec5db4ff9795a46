import { escapeXml, mutedColours } from '#shared-core';
import type { Sheet, SheetChart } from './workbook.ts';
import { columnLetters, xmlHead } from './xml.ts';

const chartNamespace = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const drawNamespace = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const placeNamespace = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';
const linkNamespace = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
/** Each line also has a dash of its own. */
const lines = [
  { colour: mutedColours.indigo, dash: 'solid' },
  { colour: mutedColours.wine, dash: 'dash' },
  { colour: mutedColours.green, dash: 'sysDot' },
] as const;

/** A scatter chart with lines over the first `rowCount` rows of a sheet. Source: ECMA-376, part 1, 21.2. */
export function chartXml(sheet: Sheet, chart: SheetChart, rowCount: number): string {
  const range = (column: number) => {
    const letters = columnLetters(column);
    return escapeXml(
      `'${sheet.name.replaceAll("'", "''")}'!$${letters}$2:$${letters}$${rowCount + 1}`,
    );
  };
  const titleCell = (column: number) =>
    escapeXml(`'${sheet.name.replaceAll("'", "''")}'!$${columnLetters(column)}$1`);
  const series = (column: number, index: number) => {
    const { colour, dash } = lines[index % lines.length] ?? lines[0];
    const name = escapeXml(sheet.columns[column]?.title ?? '');
    return (
      `<c:ser><c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:strRef><c:f>${titleCell(column)}</c:f>` +
      `<c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>${name}</c:v></c:pt></c:strCache></c:strRef></c:tx>` +
      `<c:spPr><a:ln w="15875"><a:solidFill><a:srgbClr val="${colour.slice(1)}"/></a:solidFill><a:prstDash val="${dash}"/></a:ln></c:spPr>` +
      `<c:marker><c:symbol val="none"/></c:marker><c:xVal><c:numRef><c:f>${range(chart.xColumn)}</c:f></c:numRef></c:xVal>` +
      `<c:yVal><c:numRef><c:f>${range(column)}</c:f></c:numRef></c:yVal><c:smooth val="0"/></c:ser>`
    );
  };
  let lineCount = 0;
  const plots = chart.yAxes.map(
    ({ columns }, axis) =>
      '<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>' +
      `${columns.map((column) => series(column, lineCount++)).join('')}` +
      `<c:axId val="${2 * axis + 1}"/><c:axId val="${2 * axis + 2}"/></c:scatterChart>`,
  );
  const [left, right] = chart.yAxes;
  return (
    `${xmlHead}<c:chartSpace xmlns:c="${chartNamespace}" xmlns:a="${drawNamespace}" xmlns:r="${linkNamespace}"><c:roundedCorners val="0"/>` +
    `<c:chart>${titleXml(chart.title)}<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>${plots.join('')}` +
    `${axisXml(1, 2, 'b', chart.xTitle)}${axisXml(2, 1, 'l', left.title)}` +
    `${right === undefined ? '' : `${axisXml(3, 4, 'hidden', chart.xTitle)}${axisXml(4, 3, 'r', right.title)}`}</c:plotArea>` +
    `<c:legend><c:legendPos val="b"/></c:legend><c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart></c:chartSpace>`
  );
}

function titleXml(words: string): string {
  return `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:r><a:t>${escapeXml(words)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;
}

/** `hidden`: the second axis on the right needs one along the bottom, which is the same as the first. */
function axisXml(
  id: number,
  crosses: number,
  place: 'b' | 'l' | 'r' | 'hidden',
  title: string,
): string {
  const isHidden = place === 'hidden';
  const position = isHidden ? 'b' : place;
  return (
    `<c:valAx><c:axId val="${id}"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="${isHidden ? 1 : 0}"/>` +
    `<c:axPos val="${position}"/>${position === 'l' ? '<c:majorGridlines/>' : ''}${titleXml(title)}` +
    `<c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/>` +
    `<c:tickLblPos val="${place === 'r' ? 'high' : 'low'}"/><c:crossAx val="${crosses}"/><c:crosses val="${place === 'r' ? 'max' : 'min'}"/></c:valAx>`
  );
}

/** Where the chart lies on its sheet: beside the columns. Source: ECMA-376, part 1, 20.5. */
export function drawingXml(sheet: Sheet): string {
  const from = sheet.columns.length + 1;
  const anchor = (name: 'from' | 'to', column: number, row: number) =>
    `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
  return (
    `${xmlHead}<xdr:wsDr xmlns:xdr="${placeNamespace}" xmlns:a="${drawNamespace}"><xdr:twoCellAnchor>` +
    `${anchor('from', from, 1)}${anchor('to', from + 10, 24)}<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr>` +
    `<xdr:cNvPr id="2" name="${escapeXml(sheet.chart?.title ?? 'Chart')}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>` +
    '<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>' +
    `<a:graphic><a:graphicData uri="${chartNamespace}"><c:chart xmlns:c="${chartNamespace}" xmlns:r="${linkNamespace}" r:id="rId1"/>` +
    '</a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>'
  );
}
