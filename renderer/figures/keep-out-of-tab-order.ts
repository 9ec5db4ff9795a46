/**
 * Chromium lets Tab stop at any SVG group that something listens to for focus, and React listens at the groups into which the
 * chart library draws its layers. They say nothing and do nothing, so Tab passes them by.
 */
export function keepOutOfTabOrder(drawing: Element | null): void {
  for (const layer of drawing?.querySelectorAll(
    'g[class^="recharts-zIndex-layer"]:not([tabindex])',
  ) ?? []) {
    layer.setAttribute('tabindex', '-1');
  }
}
