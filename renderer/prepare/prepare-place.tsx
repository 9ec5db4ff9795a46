import { Button } from '../design/index.ts';
import { goTo, useBench } from '../parts/index.ts';
import { PlanSection, usePreparedPlan } from '../plan/index.ts';
import { isRunUnderWay, mayCommand } from '../stores/index.ts';
import { ChargeSection } from './charge-section.tsx';
import { Invitation } from './invitation.tsx';
import { PressureSection } from './pressure-section.tsx';
import { ProbeSection } from './probe-section.tsx';
import { RigBar } from './rig-bar.tsx';
import { SafetySection } from './safety-section.tsx';
import { StartPanel } from './start-panel.tsx';
import { StopSection } from './stop-section.tsx';

/** Prepare: everything before heat, on one sheet, with what to expect beside it. */
export function PreparePlace() {
  const canAct = useBench(mayCommand);
  const isRecording = useBench(isRunUnderWay);
  const prepared = usePreparedPlan();
  return (
    <main className="place prepare" id="place">
      <h1>Prepare the run</h1>
      {isRecording ? <UnderWay /> : <WaysIn canAct={canAct} />}
      <div className="prepare-columns">
        <div>
          <ProbeSection canAct={canAct && !isRecording} />
          <ChargeSection />
          <PressureSection />
          <SafetySection />
          <StopSection />
          <PlanSection prepared={prepared} />
        </div>
        <StartPanel canAct={canAct} plan={prepared.plan} />
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
      <h2 id="under-way-title">A run is under way</h2>
      <Button weight="main" size="large" onClick={() => goTo('watch')}>
        Watch the run under way
      </Button>
    </section>
  );
}
