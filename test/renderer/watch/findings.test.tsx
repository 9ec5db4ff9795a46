// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { createMonitor, type Snapshot } from '#shared-core';
import { Findings } from '../../../renderer/watch/findings.tsx';
import { plainSnapshot } from '../../support/plain-snapshot.ts';
import { simulatedRun } from '../../support/simulated-run.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

/** Some minutes into the main fraction, with nothing booked. */
function mainFraction(): Snapshot {
  const { settings, inputs } = simulatedRun({ name: 'pear', pressureKPa: 99.4, seed: 1 });
  const monitor = createMonitor(settings);
  const readings = inputs.filter(({ kind, timeS }) => kind === 'reading' && timeS < 1500);
  for (const reading of readings) monitor.push(reading);
  return plainSnapshot(monitor.snapshot());
}

function findingsOf(snapshot: Snapshot): string {
  const { container } = renderInWindow(<Findings snapshot={snapshot} />);
  // Numbers keep to their units by spaces that do not break.
  const text = (container.textContent ?? '').replaceAll(/\s/g, ' ');
  cleanup();
  return text;
}

describe('Findings', () => {
  const snapshot = mainFraction();

  test('do not name a stage and give it a small chance at once', () => {
    const stageAt = (probability: number): string =>
      findingsOf({ ...snapshot, stage: { ...snapshot.stage, probability } });
    expect(stageAt(0.995)).toMatch(/Main ethanol fraction\s*Why\?/);
    expect(stageAt(0.82)).toContain('Main ethanol fraction · 80 % likely');
    expect(stageAt(0.2)).toContain('Main ethanol fraction · perhaps over');
  });

  test('do not say how likely a stage is while the probe is in doubt', () => {
    const stage = { ...snapshot.stage, probability: 1, condition: 'probe-suspect' } as const;
    const said = findingsOf({ ...snapshot, stage });
    expect(said).toContain('Main ethanol fraction · in doubt');
    expect(said).not.toContain('likely');
  });
});
