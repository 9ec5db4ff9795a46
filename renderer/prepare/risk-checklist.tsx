import { useState } from 'react';
import { cautionOf, cautionsAt, commonPractice, type KnownCaution } from '#shared-core';
import { Button, Dialog, Printed } from '../design/index.ts';
import { usePrepare } from '../parts/index.ts';
import { type SafetyLook, safetyLooks } from './safety-checks.ts';

/** The way to one page of paper for the school’s own form. */
export function RiskChecklist() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button onClick={() => setOpen(true)}>Risk checklist on paper …</Button>
      {isOpen && (
        <Dialog title="Risk checklist on paper" onClose={() => setOpen(false)}>
          <Printed>
            <Checklist />
          </Printed>
          <div className="dialog-acts">
            <Button onClick={() => setOpen(false)}>Close</Button>
            <Button weight="main" onClick={() => window.print()}>
              Print
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
  const { name, chargeVolumeMl, chargeStrengthAbv } = usePrepare((state) => state.draft);
  return (
    <div className="risk-checklist">
      <h1>Risk checklist: distilling a ferment before a class</h1>
      <p>
        To be kept with the school’s own risk assessment, which it does not replace. {rules.act}{' '}
        {tool.act} {tool.because}
      </p>
      <ul className="lines-to-fill">
        <Line name="School and room" />
        <Line name="Class" />
        <Line name="Date" />
        <Line
          name="Charge"
          filled={`${name}: ${chargeVolumeMl} mL of ${chargeStrengthAbv} % vol`}
        />
      </ul>
      <h2>Before heat: looked at and ticked by hand</h2>
      <ul className="ticks">
        {safetyLooks.map((look) => (
          <Look key={look.title} look={look} />
        ))}
      </ul>
      <h2>While it is hot, and afterwards</h2>
      <p>{actsOf([...whileHot, ...afterwards])}</p>
      <h2>Further measures that the rules here ask for</h2>
      <ul className="lines-to-fill lines-empty" aria-hidden="true">
        <Line name="" />
        <Line name="" />
      </ul>
      <h2>Names</h2>
      <ul className="lines-to-fill">
        <Line name="Prepared by" />
        <Line name="Date and signature" />
        <Line name="At the still" />
        <Line name="Date and signature" />
        <Line name="Seen by" />
        <Line name="Date and signature" />
      </ul>
      <p className="sheet-source">{commonPractice}</p>
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
              <b>{check}.</b> {because}
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

function actsOf(told: readonly KnownCaution[]): string {
  return told.map(({ act }) => act).join(' ');
}
