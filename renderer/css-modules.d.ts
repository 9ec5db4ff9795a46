/** Style sheets are imported for their effect; vite turns them into files. */
declare module '*.css';
