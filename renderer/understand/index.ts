/** Figures that explain the still at this moment. */
export { CursorLayer } from './cursor-layer.tsx';
export { UnderstandPanel } from './understand-panel.tsx';
export { useUnderstanding } from './use-understanding.ts';
