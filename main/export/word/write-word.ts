import { setImmediate } from 'node:timers/promises';
import { strFromU8, unzipSync } from 'fflate';
import type { PrintedDocument } from '#shared-core';
import type { RenderPng } from '../print/png-once.ts';
import { renderPng } from '../print/render-png.ts';
import { zipStream } from '../zip-stream.ts';

/**
 * A document for a word processor (Office Open XML, ISO/IEC 29500), to go on writing in: headings, captions and cautions by named styles, tables as
 * tables, figures as pictures with their words. The date is the caller's, so the same document gives the same bytes.
 */
export async function writeWord(
  printed: PrintedDocument,
  createdMs: number,
  render: RenderPng = renderPng,
): Promise<Uint8Array> {
  // Loaded when it is needed: no start of the program waits for it.
  const { AlignmentType, Document, Footer, HeadingLevel, Packer, PageNumber, Paragraph, TextRun } =
    await import('docx');
  const { pageProperties, wordStyles } = await import('./word-styles.ts');
  const { wordBlocks } = await import('./word-blocks.ts');
  const children = [
    new Paragraph({ text: printed.title, heading: HeadingLevel.TITLE }),
    new Paragraph({ children: [new TextRun({ text: printed.subtitle, color: '444444' })] }),
  ];
  const pieces = [];
  for (const [index, block] of printed.blocks.entries()) {
    pieces.push(...(await wordBlocks(block, index, render)));
    // A recording under way gets its turn.
    await setImmediate();
  }
  const footer = new Paragraph({
    alignment: AlignmentType.CENTER,
    children: [
      new TextRun({ text: `${printed.footer}   `, size: 17, color: '444444' }),
      new TextRun({ children: [PageNumber.CURRENT], size: 17, color: '444444' }),
    ],
  });
  const document = new Document({
    ...wordStyles,
    title: printed.title,
    creator: 'Still Head Monitor',
    sections: [
      {
        properties: pageProperties,
        footers: { default: new Footer({ children: [footer] }) },
        children: [...children, ...pieces],
      },
    ],
  });
  return dated(await Packer.toBuffer(document), createdMs);
}

/** The same archive as of a given moment: the library writes when it ran. */
async function dated(archive: Uint8Array, createdMs: number): Promise<Uint8Array> {
  const created = new Date(createdMs).toISOString();
  const entries = Object.entries(unzipSync(archive)).map(([path, bytes]) => ({
    path,
    content: [
      path === 'docProps/core.xml'
        ? strFromU8(bytes).replace(/(<dcterms:\w+ [^>]*>)[^<]*/g, `$1${created}`)
        : bytes,
    ],
  }));
  const parts: Uint8Array[] = [];
  for await (const part of zipStream(entries, createdMs)) parts.push(part);
  return Buffer.concat(parts);
}
