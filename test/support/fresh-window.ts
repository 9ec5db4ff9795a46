import { beforeAll } from 'vitest';

/** Tests of the window share one document in each worker: every file finds it as a page that has just been opened. */
beforeAll(() => {
  document.body.replaceChildren();
  localStorage.clear();
  sessionStorage.clear();
});
