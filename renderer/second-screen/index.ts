/** A window of its own for the class, and the way to it. */
export { SecondScreenButton } from './second-screen-button.tsx';
