import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useDraftFields } from '../draft/index.ts';
import { goTo, useBench } from '../parts/index.ts';
import { PlanSection, usePreparedPlan } from '../plan/index.ts';
import { isRunUnderWay, mayCommand } from '../stores/index.ts';
import { ChargeSection } from './charge-section.tsx';
import { ExpectPanel } from './expect-panel.tsx';
import { Invitation } from './invitation.tsx';
import { KeepRig } from './keep-rig.tsx';
import { More } from './more.tsx';
import { PrepareStep } from './prepare-step.tsx';
import { PressureSection } from './pressure-section.tsx';
import { ProbeSection } from './probe-section.tsx';
import { RigBar } from './rig-bar.tsx';
import { SafetySection } from './safety-section.tsx';
import { StartPanel } from './start-panel.tsx';
import { StepBar } from './step-bar.tsx';
import { StopSection } from './stop-section.tsx';
import { TrialSection } from './trial-section.tsx';

/** Prepare: everything before heat, in four steps of a screen each, with what to expect beside them. */
export function PreparePlace() {
  const canAct = useBench(mayCommand);
  const isRecording = useBench(isRunUnderWay);
  const prepared = usePreparedPlan();
  const { draft, hasProblemIn } = useDraftFields();
  return (
    <main className="place prepare" id="place">
      <h1>{say('Prepare the run')}</h1>
      {isRecording && <UnderWay />}
      <StepBar />
      <div className="prepare-columns">
        <div>
          <PrepareStep step="probe" lead={say('In the still head, level with the side arm.')}>
            {!isRecording && <WaysIn canAct={canAct} />}
            <ProbeSection canAct={canAct && !isRecording} />
          </PrepareStep>
          <PrepareStep
            step="pot"
            lead={say('What is in the pot, what stands on it, and when the heat goes off.')}
          >
            <ChargeSection />
            <StopSection />
            <More
              name={say('Expected course')}
              summary={say('drawn for this charge, rig and air, at {dripRate} mL/min', {
                dripRate: draft.dripRateMlPerMin.trim(),
              })}
              mustShow={hasProblemIn('dripRateMlPerMin')}
            >
              <PlanSection prepared={prepared} />
            </More>
          </PrepareStep>
          <PrepareStep step="air" lead={say('In this room, today.')}>
            <PressureSection />
            {!isRecording && <KeepRig canAct={canAct} />}
          </PrepareStep>
          <PrepareStep
            step="checks"
            lead={say(
              'Look, then confirm. This program advises; it is no safety device and controls nothing.',
            )}
          >
            <SafetySection />
            <div className="step-end">
              {!isRecording && <StartPanel canAct={canAct} />}
              <TrialSection canAct={canAct} />
            </div>
          </PrepareStep>
        </div>
        <ExpectPanel plan={prepared.plan} />
      </div>
    </main>
  );
}

/** Who has a set-up starts from it; who has none yet is invited to rehearse. */
function WaysIn({ canAct }: { readonly canAct: boolean }) {
  return (
    <>
      <RigBar canAct={canAct} />
      <Invitation canAct={canAct} />
    </>
  );
}

/** The first thing on the page where the program opens: whoever comes back wants the run, not the next one. */
function UnderWay() {
  return (
    <section className="invitation" aria-labelledby="under-way-title">
      <h2 id="under-way-title">{say('A run is under way')}</h2>
      <Button weight="main" size="large" onClick={() => goTo('watch')}>
        {say('Watch the run under way')}
      </Button>
    </section>
  );
}
