/**
 * Chromium lets Tab stop at any SVG group that something listens to for focus, and React listens at the groups into which the
 * chart library draws its layers. They say nothing and do nothing, so Tab passes them by. The library adds some of them after it
 * was drawn, so they are looked for once more in the next frame; a drawing that stands still is not drawn again.
 */
export function keepOutOfTabOrder(drawing: Element | null): () => void {
  const passBy = () => {
    for (const layer of drawing?.querySelectorAll(
      'g[class^="recharts-zIndex-layer"]:not([tabindex])',
    ) ?? []) {
      layer.setAttribute('tabindex', '-1');
    }
  };
  passBy();
  const nextFrame = requestAnimationFrame(passBy);
  return () => cancelAnimationFrame(nextFrame);
}
