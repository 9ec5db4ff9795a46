/** What a person measured, entered beside the still. */
export { MeasureDialog } from './measure-dialog.tsx';
export { MeasureForm } from './measure-form.tsx';
