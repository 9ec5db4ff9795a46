// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { type ProbeStatus, serialSourceSchema } from '#shared-core';
import { ToBeRecorded } from '../../../renderer/prepare/to-be-recorded.tsx';
import { firstDraft, withConfirms } from '../../../renderer/stores/prepare-draft.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const rows = () =>
  Object.fromEntries(
    [...document.querySelectorAll('dl > div')].map(({ children }) => [
      children[0]?.textContent,
      children[1]?.textContent?.replaceAll('\u00a0', ' '),
    ]),
  );

test('before the start it is told what the record will hold: as entered, as heard, as looked at', () => {
  renderInWindow(<ToBeRecorded />, undefined, ({ bench, prepare }) => {
    const probe: ProbeStatus = {
      state: 'hearing',
      source: serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' }),
      path: '/dev/ttyACM0',
      lastLine: null,
      channels: ['head', 'pot'],
      latest: [],
      readingsPerS: 1,
      rejectedLines: 0,
      droppedBytes: 0,
      problem: null,
      advice: null,
    };
    bench.getState().dispatch({ type: 'probe', probe });
    const draft = { ...firstDraft, altitudeM: '540', role: 'technician' } as const;
    const confirmed = withConfirms(draft, ['fill', 'boiling-stones'], true, '2026-01-01T09:00:00Z');
    prepare.getState().replace(confirmed);
  });
  expect(rows()).toEqual({
    Run: 'Distillation',
    'Every reading of': 'still head and pot',
    'Kind of probe': 'Digital, in a steel sleeve, assumed: nobody has stated it',
    Charge: '350 mL of 9.0 % vol, assumed: nobody has stated it',
    'Air pressure': '95.0 kPa ± 1.9 kPa',
    'Heat off at': '80 % vol',
    'Looks before heat': '1 of 7, each with its time and “technician”',
    'During the run': 'every mark and note with its time, every prompt and how it was answered',
  });
  expect(document.body.textContent).toMatch(/Nobody’s name is asked for/);
});

test('of a form that can’t start a run nothing is told', () => {
  renderInWindow(<ToBeRecorded />);
  expect(document.body.textContent).toBe('');
});
