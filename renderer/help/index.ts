/** The help, with its numbers computed. */
export { HelpButton } from './help-button.tsx';
