import { type RunSettings, say, told } from '#shared-core';
import { ChoiceField } from '../design/index.ts';
import { usePrepare } from '../parts/index.ts';
import { type Role, withConfirms } from '../stores/index.ts';
import { inMidSentence, timeOfDayWords } from '../words/index.ts';
import { RiskChecklist } from './risk-checklist.tsx';
import { roleTitles } from './role-titles.ts';
import { looksLeft, type SafetyLook, safetyLooks } from './safety-checks.ts';

const roles = (['teacher', 'technician', 'assistant'] as const satisfies readonly Role[]).map(
  (value) => ({ value, label: roleTitles[value] }),
);

/** Every look at the bench is confirmed by itself, with the role of who looked; the record keeps each check of it. */
export function SafetySection() {
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  return (
    <div className="prepare-fields">
      <div className="field-wide who-looks">
        <ChoiceField
          name={say('Who is looking')}
          options={roles}
          value={draft.role}
          onValue={(role) => change({ role })}
        />
        <RiskChecklist />
      </div>
      <ul className="checks field-wide">
        {safetyLooks.map((look) => (
          <Look key={look.title} look={look} />
        ))}
      </ul>
    </div>
  );
}

function Look({ look }: { readonly look: SafetyLook }) {
  const draft = usePrepare((state) => state.draft);
  const replace = usePrepare((state) => state.replace);
  const { title, checks } = look;
  const isDone = !looksLeft(draft.confirms).includes(look);
  const confirm = draft.confirms.find(({ check }) => check === checks[0]?.id);
  const ids = checks.map(({ id }) => id);
  return (
    <li>
      <label className="check">
        <input
          type="checkbox"
          checked={isDone}
          data-field={isDone ? undefined : 'checks'}
          onChange={({ target }) =>
            replace(withConfirms(draft, ids, target.checked, new Date().toISOString()))
          }
        />
        <span>
          <strong>{title}</strong>
          {isDone && confirm && (
            <span className="check-role"> ✓{`\u00a0${confirmWords(confirm)}`}</span>
          )}
          {checks.map(({ id, check }) => (
            <span key={id} className="check-line">
              {check !== undefined && told(check)}
            </span>
          ))}
        </span>
      </label>
      <details className="why">
        <summary aria-label={say('Why: {title}', { title })}>{say('Why?')}</summary>
        {checks.map(({ id, because }) => (
          <p key={id} className="small soft">
            {told(because)}
          </p>
        ))}
      </details>
    </li>
  );
}

function confirmWords({ role, confirmedAtIso }: RunSettings['safetyConfirms'][number]): string {
  const who = inMidSentence(roleTitles[role]);
  return confirmedAtIso === undefined ? who : `${who}, ${timeOfDayWords(confirmedAtIso)}`;
}
