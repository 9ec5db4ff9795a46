// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import type { ReactElement } from 'react';
import { afterEach, expect, test } from 'vitest';
import {
  type AlarmView,
  alarmCatalogue,
  type Caution,
  cautionsAt,
  defaultRunSettings,
  mostUrgentFirst,
  studyRun,
} from '#shared-core';
import { distillationPackKind } from '../../../main/export/pack/distillation-pack-kind.ts';
import { readMe } from '../../../main/export/pack/read-me.ts';
import { CalibrationWalk } from '../../../renderer/calibrate/index.ts';
import { Debrief } from '../../../renderer/debrief/index.ts';
import { FermentButtons } from '../../../renderer/ferment/index.ts';
import { SafetySection } from '../../../renderer/prepare/safety-section.tsx';
import { ProofForm } from '../../../renderer/proof/proof-form.tsx';
import { Prompts } from '../../../renderer/watch/prompts.tsx';
import { type CautionPlace, cautionPlaces } from '../../../shared-core/cautions/caution.ts';
import { cautions } from '../../../shared-core/cautions/cautions.ts';
import { worksheetOf } from '../../../shared-core/report/distillation-sheets.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const list: readonly Caution[] = cautions;
const study = studyRun({
  runId: 'a',
  name: 'Pear',
  startedAtIso: '',
  rehearsal: false,
  settings: defaultRunSettings,
  appVersion: '0',
  modelVersion: '1',
  inputs: [],
  endS: 60,
});

function shown(element: ReactElement, press?: string): string {
  renderInWindow(element, undefined, ({ prepare }) => {
    const { draft } = prepare.getState();
    prepare.setState({ draft: { ...draft, altitudeM: '100' } });
  });
  if (press !== undefined) fireEvent.click(screen.getByRole('button', { name: press }));
  const text = document.body.textContent ?? '';
  cleanup();
  return text;
}

function shownPrompt(alarm: AlarmView['alarm']): string {
  const { act, priority, consequence } = alarmCatalogue[alarm];
  const view: AlarmView = {
    alarm,
    state: 'unacknowledged',
    priority,
    raisedS: 60,
    act,
    because: '',
    consequence,
    wouldChangeIf: '',
    shelvedUntilS: null,
  };
  return shown(<Prompts alarms={[view]} nowS={61} isLive isCalm={false} />);
}

/** What each place really draws or prints. */
const renderings: Readonly<Record<CautionPlace, () => string>> = {
  ferment: () => shown(<FermentButtons />, 'Plan the ferment'),
  prepare: () => shown(<SafetySection />),
  prompt: () => mostUrgentFirst.map(shownPrompt).join('\n'),
  calibrate: () => shown(<CalibrationWalk />),
  debrief: () => shown(<Debrief progress={{ step: 'reading' }} />),
  proof: () => shown(<ProofForm cuts={3} canAct onMark={async () => true} />),
  report: () => JSON.stringify(reportOf([study]).blocks),
  worksheet: () => JSON.stringify(worksheetOf(study, 'school').blocks),
  pack: () => readMe(distillationPackKind, [study], [{ path: 'report.pdf' }]),
};

const isSaidIn = (text: string) => (caution: Caution) =>
  [caution.because, caution.check].some((words) => words !== undefined && text.includes(words));

test.each(cautionPlaces)(
  '“%s” says each caution that names it, and none that does not',
  (place) => {
    const text = renderings[place]();
    expect(list.filter(isSaidIn(text)).map(({ id }) => id)).toEqual(
      cautionsAt(place).map(({ id }) => id),
    );
  },
);
