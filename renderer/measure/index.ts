export { MeasureDialog } from './measure-dialog.tsx';
export { MeasureForm } from './measure-form.tsx';
