// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { ClosedNote } from '../../../renderer/watch/closed-note.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const noteOf = (gap: Parameters<typeof ClosedNote>[0]['gaps'][number]): string =>
  renderInWindow(<ClosedNote gaps={[gap]} />).container.textContent ?? '';

test('a run that went on says when the program was closed, and that nobody knows it where no clock tells', () => {
  const gap = { fromS: 60.25, toS: 95.5, reason: 'program-closed' };
  const known = noteOf(gap);
  cleanup();
  expect(known).toBe('The program was closed from 0:01:00 to 0:01:35: no readings.');
  expect(noteOf({ ...gap, isLonger: true })).toContain('nobody knows how long');
  cleanup();
  expect(noteOf({ ...gap, reason: 'unplugged' })).toBe('');
});

test('a run says when the part that reads the probe had stopped', () => {
  const gap = { fromS: 60.25, toS: 63.5, reason: 'reader-stopped' };
  expect(noteOf(gap)).toBe(
    'The part of the program that reads the probe stopped from 0:01:00 to 0:01:03: what the probe sent then is not recorded.',
  );
  cleanup();
  expect(noteOf({ ...gap, toS: null })).toBe('');
});
