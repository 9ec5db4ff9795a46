export { HelpButton } from './help-button.tsx';
