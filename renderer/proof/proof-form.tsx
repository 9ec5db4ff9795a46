import { useState } from 'react';
import { cautionsAt, type MarkBody, mostBurnedMl, type ProofMark, say } from '#shared-core';
import { ChoiceField } from '../design/index.ts';
import { ProofConditions } from './proof-conditions.tsx';
import { SightForm } from './sight-form.tsx';

interface ProofFormProps {
  readonly cuts: number;
  readonly canAct: boolean;
  /** False where it could not be kept. */
  readonly onMark: (mark: MarkBody) => Promise<boolean>;
}

const roles = [
  { value: 'teacher', label: say('Teacher') },
  { value: 'technician', label: say('Technician') },
] as const satisfies readonly { value: ProofMark['role']; label: string }[];

const conditions = cautionsAt('proof');

/** One sample: nothing can be kept of it before every condition is confirmed, and the next one begins anew. */
export function ProofForm({ cuts, canAct, onMark }: ProofFormProps) {
  const [role, setRole] = useState<ProofMark['role']>('teacher');
  const [confirmed, setConfirmed] = useState<readonly string[]>([]);
  const left = conditions.length - confirmed.length;
  const keep = async (seen: Pick<ProofMark, 'cut' | 'volumeMl' | 'seen'>) => {
    const isKept = await onMark({ type: 'proof-burned', ...seen, role, confirmed: [...confirmed] });
    if (isKept) setConfirmed([]);
  };
  return (
    <>
      <section className="proof-before" aria-labelledby="proof-before">
        <h2 id="proof-before">{say('Before it is lit')}</h2>
        <ChoiceField name={say('Who does it')} options={roles} value={role} onValue={setRole} />
        <ProofConditions
          conditions={conditions}
          confirmed={confirmed}
          isLocked={!canAct}
          onConfirmed={setConfirmed}
        />
      </section>
      <section aria-labelledby="proof-seen">
        <h2 id="proof-seen">{say('What was seen')}</h2>
        {left > 0 ? (
          <p role="status">
            {say('Light nothing yet: confirm {what}.', {
              what:
                left === conditions.length
                  ? say('all {left}', { left })
                  : say('{left} more', { left }),
            })}
          </p>
        ) : (
          <SightForm cuts={cuts} mostMl={mostBurnedMl} canAct={canAct} onSeen={keep} />
        )}
      </section>
    </>
  );
}
