import { useState } from 'react';
import { cautionOf, cautionsAt, commonPractice, type KnownCaution, say, told } from '#shared-core';
import { Button, Dialog, Printed } from '../design/index.ts';
import { assumedOfCharge, runNameOf } from '../draft/index.ts';
import { usePrepare } from '../parts/index.ts';
import { type SafetyLook, safetyLooks } from './safety-checks.ts';

/** The way to one page of paper for the school’s own form. */
export function RiskChecklist() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button onClick={() => setOpen(true)}>{say('Risk checklist on paper …')}</Button>
      {isOpen && (
        <Dialog title={say('Risk checklist on paper')} onClose={() => setOpen(false)}>
          <Printed>
            <Checklist />
          </Printed>
          <div className="dialog-acts">
            <Button onClick={() => setOpen(false)}>{say('Close')}</Button>
            <Button weight="main" onClick={() => window.print()}>
              {say('Print')}
            </Button>
          </div>
        </Dialog>
      )}
    </>
  );
}

const tool = cautionOf('no-safety-device');
const rules = cautionOf('permission');

/** What the report says of the product beside tool and rules, as far as it is about danger. */
const afterwards = cautionsAt('report').filter(
  ({ id }) => id !== 'no-safety-device' && id !== 'permission' && id !== 'estimate',
);
const whileHot = cautionsAt('prompt').filter(({ check }) => check === undefined);

/** Made from the one list of cautions: what is said on the screen and what is signed must not differ. */
function Checklist() {
  const draft = usePrepare((state) => state.draft);
  const { chargeVolumeMl, chargeStrengthAbv } = draft;
  const name = runNameOf(draft);
  return (
    <div className="risk-checklist">
      <h1>{say('Risk checklist: distilling before a class')}</h1>
      <p>
        {say(
          'To be kept with the school’s own risk assessment, which it does not replace. {rules} {tool} {because}',
          { rules: told(rules.act), tool: told(tool.act), because: told(tool.because) },
        )}
      </p>
      <ul className="lines-to-fill">
        <Line name={say('School and room')} />
        <Line name={say('Class')} />
        <Line name={say('Date')} />
        <Line
          name={say('Charge')}
          // To be written by hand where nobody stated it: the sheet is signed.
          filled={
            assumedOfCharge(draft).length > 0
              ? `${name}: `
              : say('{name}: {chargeVolume} mL of {chargeStrength} % vol', {
                  name,
                  chargeVolume: chargeVolumeMl,
                  chargeStrength: chargeStrengthAbv,
                })
          }
        />
      </ul>
      <h2>{say('Before heat: looked at and ticked by hand')}</h2>
      <ul className="ticks">
        {safetyLooks.map((look) => (
          <Look key={look.title} look={look} />
        ))}
      </ul>
      <h2>{say('While it is hot, and afterwards')}</h2>
      <p>{actsOf([...whileHot, ...afterwards])}</p>
      <h2>{say('Further measures that the rules here ask for')}</h2>
      <ul className="lines-to-fill lines-empty" aria-hidden="true">
        <Line name="" />
        <Line name="" />
      </ul>
      <h2>{say('Names')}</h2>
      <ul className="lines-to-fill">
        <Line name={say('Prepared by')} />
        <Line name={say('Date and signature')} />
        <Line name={say('At the still')} />
        <Line name={say('Date and signature')} />
        <Line name={say('Seen by')} />
        <Line name={say('Date and signature')} />
      </ul>
      <p className="sheet-source">{told(commonPractice)}</p>
    </div>
  );
}

function Look({ look: { title, checks } }: { readonly look: SafetyLook }) {
  return (
    <li>
      <strong>{title}</strong>
      <ul>
        {checks.map(({ id, check, because }) => (
          <li key={id}>
            <span className="tick" aria-hidden="true" />
            <span>
              <b>{check !== undefined && told(check)}.</b> {told(because)}
            </span>
          </li>
        ))}
      </ul>
    </li>
  );
}

function Line({ name, filled }: { readonly name: string; readonly filled?: string }) {
  return (
    <li>
      <span>{name}</span>
      <span className="line">{filled}</span>
    </li>
  );
}

function actsOf(cautions: readonly KnownCaution[]): string {
  return cautions.map(({ act }) => told(act)).join(' ');
}
