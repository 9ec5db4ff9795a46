import PdfDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { reportFonts } from '../../../main/export/print/report-fonts.ts';
import { shareReportFonts } from '../../../main/export/print/shared-font.ts';

function printed(text: string): Promise<string> {
  const pdf = new PdfDocument({ font: '', compress: false, info: { CreationDate: new Date(0) } });
  shareReportFonts(pdf);
  const pieces: Buffer[] = [];
  pdf.on('data', (piece: Buffer) => pieces.push(piece));
  const whole = new Promise<string>((resolve) => {
    pdf.on('end', () => resolve(Buffer.concat(pieces).toString('latin1')));
  });
  pdf.font(reportFonts.regular).fontSize(10).text(text);
  pdf.end();
  return whole;
}

test('spaces can be copied as spaces, whatever was printed before', async () => {
  // In the typeface both are one glyph, and the first that is seen gives it its meaning.
  await printed('78.2\u00a0°C');
  const first = await printed('two words');
  expect([first.includes('0020'), first.includes('00a0')]).toEqual([true, false]);
  expect(await printed('two words')).toBe(first);
});
