// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import type { Snapshot } from '#shared-core';
import { HeadReadout } from '../../../renderer/watch/head-readout.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

const steady: NonNullable<Snapshot['head']> = {
  temperatureC: 78.04,
  expandedUncertaintyK: 0.5,
  rateKPerMin: -0.3,
  ageS: 0.1,
};

afterEach(cleanup);

function noteOf(head: NonNullable<Snapshot['head']>): string {
  const { container } = renderInWindow(<HeadReadout head={head} liveness="live" />);
  const note = container.querySelector('.head-note')?.textContent ?? '';
  cleanup();
  return note;
}

describe('HeadReadout', () => {
  test('says which way the head goes, and how sure its temperature is', () => {
    expect(noteOf(steady)).toBe('± 0.5 K · falling 0.3 K/min');
  });

  test('names no rate while vapour arrives and the head is known to some kelvins only', () => {
    expect(noteOf({ ...steady, expandedUncertaintyK: 9.8, rateKPerMin: -78.4 })).toBe('± 9.8 K');
  });

  test('a reading that is seconds old is not shown as if it were now', () => {
    expect(noteOf({ ...steady, ageS: 8 })).toBe('last heard 8 s ago');
  });
});
