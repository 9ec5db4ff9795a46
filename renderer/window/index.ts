/** The whole window: places, notes and dialogs around them. */
export { MainWindow } from './main-window.tsx';
