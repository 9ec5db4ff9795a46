import { setImmediate } from 'node:timers/promises';
import type { PrintedDocument } from '#shared-core';
import { drawBlock, withNextPt } from './draw-block.ts';
import { writable } from './fallback-font.ts';
import { keptBlock } from './kept-block.ts';
import { contentWidth, keepTogether, margins, type Pdf, setFont, softInk, write } from './page.ts';
import { decoration, documentTag, leaf } from './tagged.ts';

/**
 * A document as tagged PDF: A4, fonts embedded, figures as vectors with their words, page numbers; structure, title
 * and language for screen readers.
 * The creation date is the caller's, so the same document gives the same bytes.
 */
export async function printDocument(
  printed: PrintedDocument,
  createdMs: number,
): Promise<Uint8Array> {
  const { default: PdfDocument } = await import('pdfkit');
  const { shareReportFonts } = await import('./shared-font.ts');
  const pdf = new PdfDocument({
    size: 'A4',
    margins: { ...margins },
    bufferPages: true,
    // Structure and its attributes are of this version.
    pdfVersion: '1.5',
    tagged: true,
    lang: 'en',
    displayTitle: true,
    // The fonts come below.
    font: '',
    info: {
      Title: printed.title,
      Producer: 'Still Head Monitor',
      Creator: 'Still Head Monitor',
      CreationDate: new Date(createdMs),
    },
  });
  shareReportFonts(pdf);
  const bytes = collect(pdf);
  const document = documentTag(pdf);
  leaf(pdf, document, 'H1', () => {
    const title = writable(printed.title);
    setFont(pdf, 'bold', 20);
    write(pdf, title, 'bold');
  });
  leaf(pdf, document, 'P', () => {
    setFont(pdf, 'regular', 10.5, softInk);
    write(pdf, printed.subtitle);
  });
  pdf.y += 8;
  for (const [index, block] of printed.blocks.entries()) {
    keepTogether(pdf, withNextPt(pdf, printed.blocks, index));
    drawBlock(pdf, document, keptBlock(block));
    // A recording under way gets its turn.
    await setImmediate();
  }
  document.end();
  numberPages(pdf, printed.footer);
  pdf.end();
  return bytes;
}

function collect(pdf: Pdf): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    pdf.on('data', (chunk: Buffer) => chunks.push(chunk));
    pdf.on('end', () => resolve(Buffer.concat(chunks)));
    pdf.on('error', reject);
  });
}

function numberPages(pdf: Pdf, footer: string): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let page = start; page < start + count; page++) {
    pdf.switchToPage(page);
    // Below the bottom margin text would begin a new page.
    pdf.page.margins.bottom = 0;
    const y = pdf.page.height - 40;
    setFont(pdf, 'regular', 8.5, softInk);
    decoration(pdf, 'Pagination', () => {
      pdf.text(footer, margins.left, y, { width: contentWidth(pdf) - 60, lineBreak: false });
      pdf.text(`${page + 1} / ${count}`, margins.left, y, {
        width: contentWidth(pdf),
        align: 'right',
        lineBreak: false,
      });
    });
  }
}
