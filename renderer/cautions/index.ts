/** The usual cautions, in a dialog and as lines. */
export { CautionLines } from './caution-lines.tsx';
export { CautionsButton } from './cautions-button.tsx';
export { CautionsDialog } from './cautions-dialog.tsx';
