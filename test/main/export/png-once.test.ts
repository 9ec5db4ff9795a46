import { expect, test } from 'vitest';
import { type Drawing, drawingToSvg, studyRun } from '#shared-core';
import { distillationPackKind } from '../../../main/export/pack/distillation-pack-kind.ts';
import { packFiles } from '../../../main/export/pack/pack-files.ts';
import { pngOnce } from '../../../main/export/print/png-once.ts';
import { renderPng } from '../../../main/export/print/render-png.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';

test('a pack renders each of its figures once, though the folder and the report both show it', async () => {
  const rendered: string[] = [];
  const render = (drawing: Drawing) => {
    rendered.push(drawingToSvg(drawing));
    return renderPng(drawing);
  };
  const files = packFiles(distillationPackKind, [studyRun(pearRun().run)], 0, pngOnce(render));
  const pictures = files.filter(({ path }) => path.endsWith('.png') || path === 'report.docx');
  for (const { content } of pictures) for await (const _ of content);
  expect(pictures.length).toBeGreaterThan(4);
  expect(rendered).toHaveLength(new Set(rendered).size);
  // All of the report's pictures are those of the folder.
  expect(rendered).toHaveLength(pictures.length - 1);
});
