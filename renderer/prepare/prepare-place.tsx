import { PlanSection } from '../plan/index.ts';
import { mayCommand } from '../stores/index.ts';
import { useBench } from '../window/use-stores.ts';
import { ChargeSection } from './charge-section.tsx';
import { Invitation } from './invitation.tsx';
import { PressureSection } from './pressure-section.tsx';
import { ProbeSection } from './probe-section.tsx';
import { SafetySection } from './safety-section.tsx';
import { StartPanel } from './start-panel.tsx';
import { StopSection } from './stop-section.tsx';

/** Prepare: everything before heat, on one sheet, with what to expect beside it. */
export function PreparePlace() {
  const canAct = useBench(mayCommand);
  const isRecording = useBench((bench) => bench.recording?.state === 'recording');
  return (
    <main className="place prepare" id="place">
      <h1>Prepare the run</h1>
      {!isRecording && <Invitation canAct={canAct} />}
      <div className="prepare-columns">
        <div>
          <ProbeSection canAct={canAct && !isRecording} />
          <ChargeSection />
          <PressureSection />
          <StopSection />
          <PlanSection />
          <SafetySection />
        </div>
        <StartPanel canAct={canAct} />
      </div>
    </main>
  );
}
