import { useMemo } from 'react';
import { type Mark, proofMeaning, type RunSummary, say, standingMarks, told } from '#shared-core';
import { MeasurementList, receiverCount, useLateMarks } from '../books/index.ts';
import { Button } from '../design/index.ts';
import { useBench } from '../parts/index.ts';
import type { Film } from '../replay/index.ts';
import { isViewer, mayCommand } from '../stores/index.ts';
import { ProofForm } from './proof-form.tsx';

interface ProofOfRunProps {
  readonly film: Film;
  readonly summary: RunSummary;
  readonly lateMarks: readonly Mark[];
  readonly onClose: () => void;
}

/** Proving the product by burning a sample: first every condition, then what was seen. */
export function ProofOfRun({ film, summary, lateMarks, onClose }: ProofOfRunProps) {
  const isRecording = useBench(({ recording }) => recording?.state === 'recording');
  const canAct = useBench(mayCommand) && summary.ended !== 'recording' && !isRecording;
  const onlyWatches = useBench(isViewer);
  const { inputs, endS } = film;
  const { late, book } = useLateMarks(summary.runId, endS, lateMarks);
  const cuts = useMemo(() => receiverCount(inputs, endS), [inputs, endS]);
  const proofs = standingMarks([...inputs, ...late]).filter(
    ({ mark }) => mark.type === 'proof-burned',
  );
  return (
    <main className="place proof" id="place">
      <div className="books-head">
        <h1>{say('Proof of “{name}”', { name: summary.name })}</h1>
        <Button onClick={onClose}>{say('Back to the library')}</Button>
      </div>
      <p className="place-lead">{told(proofMeaning)}</p>
      {summary.rehearsal ? (
        <p>{say('This was a rehearsal with the simulated still: there is nothing to burn.')}</p>
      ) : (
        <>
          {isRecording && (
            <p className="warning">
              {say('A run is being recorded: nothing is lit beside a hot still.')}
            </p>
          )}
          <section aria-labelledby="proofs">
            <h2 id="proofs">{say('Samples burned')}</h2>
            <MeasurementList
              marks={proofs}
              whenNone={say('None yet.')}
              canAct={canAct}
              onlyWatches={onlyWatches}
              onWithdraw={(withdrawnMarkId) => book({ type: 'mark-withdrawn', withdrawnMarkId })}
            />
          </section>
          {!onlyWatches && <ProofForm cuts={cuts} canAct={canAct} onMark={book} />}
        </>
      )}
    </main>
  );
}
