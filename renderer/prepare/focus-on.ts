import type { ToDo } from './still-to-do.ts';

/** Brings the entry into sight and the cursor into it. */
export function focusOn(field: ToDo['field']): void {
  const found = document.querySelector<HTMLElement>(`[data-field="${field}"]`);
  // Behind "More" it could not take the focus.
  found?.closest('details')?.setAttribute('open', '');
  found?.scrollIntoView({ block: 'center' });
  found?.focus({ preventScroll: true });
}
