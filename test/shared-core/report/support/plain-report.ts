import type { RunStudy } from '../../../../shared-core/study/study-run.ts';
import { plainStudy } from '../../exercises/support/plain-study.ts';

/** The run in round numbers with what the monitor said of it: two stages, one call that was answered and one that was not. */
export function plainReport(changes: Partial<RunStudy> = {}): RunStudy {
  const study = plainStudy();
  return {
    ...study,
    rehearsal: true,
    leftOut: ['2 damaged records were skipped; the rest is good.'],
    corrections: ['The charge was put right to 250 mL.'],
    verdicts: {
      ...study.verdicts,
      stages: [
        { stage: 'warm-up', fromS: 0, toS: 810, because: 'The bulb hangs in air.' },
        { stage: 'main-fraction', fromS: 810, toS: null, because: 'The head holds.' },
      ],
      alarms: [
        {
          alarm: 'plateau-departure',
          raisedS: 3250,
          clearedS: null,
          acknowledgedS: 3260,
          priority: 'high',
          because: 'The head leaves the plateau.',
        },
        {
          alarm: 'attention',
          raisedS: 3600,
          clearedS: null,
          acknowledgedS: null,
          priority: 'medium',
          because: 'Nobody answered.',
        },
      ],
      verdict: { mainFraction: true, because: 'There was a main fraction.' },
      problems: [{ problem: 'Two readings were left out.', fromS: 100, toS: null }],
    },
    mainFraction: 'yes',
    ...changes,
  };
}
