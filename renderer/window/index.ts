export { type Commands, createCommands } from './commands.ts';
export { MainWindow } from './main-window.tsx';
export { type WindowParts, WindowPartsContext } from './stores-context.ts';
