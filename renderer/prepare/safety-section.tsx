import type { SafetyConfirm } from '#shared-core';
import { ChoiceField } from '../design/index.ts';
import { usePrepare } from '../window/use-stores.ts';
import { timeOfDayWords } from '../words/index.ts';
import { type Role, withConfirm } from './prepare-draft.ts';
import { safetyChecks } from './safety-checks.ts';
import { Section } from './section.tsx';

const roles = [
  { value: 'teacher', label: 'Teacher' },
  { value: 'technician', label: 'Technician' },
  { value: 'assistant', label: 'Assistant' },
] as const satisfies readonly { value: Role; label: string }[];

/** Every check is confirmed one by one, with the role of who looked; the record keeps both. */
export function SafetySection() {
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  const replace = usePrepare((state) => state.replace);
  return (
    <Section
      title="Before heat"
      lead="Look, then confirm. This program advises; it is no safety device and controls nothing."
    >
      <div className="field-wide">
        <ChoiceField
          name="Who is looking"
          options={roles}
          value={draft.role}
          onValue={(role) => change({ role })}
        />
      </div>
      <ul className="checks field-wide">
        {safetyChecks.map(({ check, words, reason }) => {
          const confirm = draft.confirms.find((known) => known.check === check);
          return (
            <li key={check}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={confirm !== undefined}
                  onChange={({ target }) =>
                    replace(withConfirm(draft, check, target.checked, new Date().toISOString()))
                  }
                />
                <span>
                  <strong>{words}</strong>
                  {confirm && (
                    <span className="check-role"> ✓{`\u00a0${confirmWords(confirm)}`}</span>
                  )}
                  <br />
                  <span className="small soft">{reason}</span>
                </span>
              </label>
            </li>
          );
        })}
      </ul>
    </Section>
  );
}

function confirmWords({ role, confirmedAtIso }: SafetyConfirm): string {
  return confirmedAtIso === undefined ? role : `${role}, ${timeOfDayWords(confirmedAtIso)}`;
}
