export { type Commands, createCommands } from '../parts/commands.ts';
export { type WindowParts, WindowPartsContext } from '../parts/stores-context.ts';
export { MainWindow } from './main-window.tsx';
