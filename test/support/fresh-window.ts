import { configure } from '@testing-library/react';
import { beforeAll } from 'vitest';

// A loaded machine draws late, and that is no failure.
configure({ asyncUtilTimeout: 60_000 });

/** Tests of the window share one document in each worker: every file finds it as a page that has just been opened. */
beforeAll(() => {
  document.body.replaceChildren();
  localStorage.clear();
  sessionStorage.clear();
});
