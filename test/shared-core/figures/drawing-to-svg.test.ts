import { expect, test } from 'vitest';
import { drawingToSvg } from '../../../shared-core/figures/drawing-to-svg.ts';

const svg = (drawing: Parameters<typeof drawingToSvg>[0]) => drawingToSvg(drawing).split('\n');

test('lines, areas and words become elements of SVG 1.1, to a hundredth of a point', () => {
  expect(
    svg({
      widthPt: 100.006,
      heightPt: 50,
      altText: 'A "B" & <C>',
      shapes: [
        {
          kind: 'path',
          points: [
            [0, 1.234],
            [10, 2],
            [20.5, 3],
          ],
          stroke: { colour: '#111111', widthPt: 0.8, dash: [4, 3] },
        },
        {
          kind: 'path',
          points: [
            [1, 2],
            [3, 4],
          ],
          closed: true,
          fill: '#222222',
        },
        {
          kind: 'text',
          at: [5, 6.789],
          text: 'plain',
          sizePt: 8.5,
          anchor: 'start',
          colour: '#333333',
        },
        {
          kind: 'text',
          at: [7, 8],
          text: 'a < b',
          sizePt: 9,
          anchor: 'middle',
          weight: 'bold',
          upright: true,
          colour: '#444444',
        },
      ],
    }),
  ).toEqual([
    '<svg xmlns="http://www.w3.org/2000/svg" width="100.01pt" height="50pt" viewBox="0 0 100.01 50" role="img" font-family="\'Source Sans 3\', \'Source Sans Pro\', \'Helvetica Neue\', Arial, sans-serif">',
    '<title>A &quot;B&quot; &amp; &lt;C&gt;</title>',
    '<rect width="100.01" height="50" fill="#ffffff"/>',
    '<path d="M0 1.23L10 2L20.5 3" fill="none" stroke="#111111" stroke-width="0.8" stroke-linejoin="round" stroke-linecap="round" stroke-dasharray="4 3"/>',
    '<path d="M1 2L3 4Z" fill="#222222"/>',
    '<text x="5" y="6.79" font-size="8.5" fill="#333333">plain</text>',
    '<text x="7" y="8" font-size="9" fill="#444444" font-weight="700" text-anchor="middle" transform="rotate(-90 7 8)">a &lt; b</text>',
    '</svg>',
    '',
  ]);
});

test('a solid line has no dashes', () => {
  const stroke = { colour: '#111111', widthPt: 1 };
  const [, , , line] = svg({
    widthPt: 9,
    heightPt: 9,
    altText: '',
    shapes: [{ kind: 'path', points: [[0, 0]], stroke }],
  });
  expect(line).toBe(
    '<path d="M0 0" fill="none" stroke="#111111" stroke-width="1" stroke-linejoin="round" stroke-linecap="round"/>',
  );
});
