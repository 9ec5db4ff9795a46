/** Controls, dialogs and looks that know nothing of a still. */
export { AboveDialogs } from './above-dialogs.ts';
export { Button } from './button.tsx';
export { ChoiceField } from './choice-field.tsx';
export { Dialog } from './dialog.tsx';
export { fieldsOf } from './fields-of.ts';
export { Form } from './form.tsx';
export { FormDialog } from './form-dialog.tsx';
export { NumberField } from './number-field.tsx';
export { OnPaper, Printed } from './on-paper.tsx';
export { Section } from './section.tsx';
export { SelectField } from './select-field.tsx';
export { type StackingColumn, StackingTable } from './stacking-table.tsx';
export { stageLooks } from './stage-look.ts';
export { TextBlock } from './text-block.tsx';
export { TextLine } from './text-line.tsx';
export { Textures } from './textures.tsx';
export { useSmallTextPx } from './use-small-text-px.ts';
export { Why } from './why.tsx';
