/** The window's built files: which may be read, and under which policy a page gets them. */
export { contentSecurityPolicy, securityHeaders } from './content-security-policy.ts';
export type { WindowFile, WindowFileProblem } from './read-window-file.ts';
export { isInsideFolder, type PathProblem, resolveBoundPath } from './resolve-bound-path.ts';
export { createWindowFiles, type WindowFiles } from './window-files.ts';
