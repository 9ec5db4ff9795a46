// @vitest-environment happy-dom
import { expect, test } from 'vitest';
import { keepOutOfTabOrder } from '../../../renderer/figures/keep-out-of-tab-order.ts';

const layer = () => {
  const group = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  group.setAttribute('class', 'recharts-zIndex-layer_500');
  return group;
};

test('Tab passes by the layers of a drawing, also by one that is added before the next frame', async () => {
  const drawing = document.createElement('div');
  const [there, added] = [layer(), layer()];
  drawing.append(there);
  keepOutOfTabOrder(drawing);
  drawing.append(added);
  await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
  expect([there, added].map((group) => group.getAttribute('tabindex'))).toEqual(['-1', '-1']);
});
