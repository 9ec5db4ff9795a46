import { useState } from 'react';
import {
  cautionsAt,
  type FermentVerdict,
  fermentTable,
  type KeptFerment,
  originOfFerment,
  say,
  settingRanges,
  type WarmthReport,
} from '#shared-core';
import { CautionLines } from '../cautions/index.ts';
import { Button, Dialog, SelectField } from '../design/index.ts';
import { PackProgress, saveFile, usePack } from '../exchange/index.ts';
import { useBench, usePreferences, usePrepare } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { useKeptWarm, useWarmthReport, WarmthSection } from '../warmth/index.ts';
import { dateWords } from '../words/index.ts';
import type { PlannedFerment } from './begin-draft.ts';
import { BeginForm } from './begin-form.tsx';
import { chargeFrom } from './charge-from.ts';
import type { CorrectForm } from './correct-form.tsx';
import { EntryForm } from './entry-form.tsx';
import { EntryList } from './entry-list.tsx';
import { heardWarmth } from './heard-warmth.ts';
import { StatedShown } from './stated-shown.tsx';
import { useFerments } from './use-ferments.ts';
import { useJudgement } from './use-judgement.ts';
import { Readiness, VerdictShown } from './verdict-shown.tsx';
import { WeekDrawn } from './week-drawn.tsx';

interface FermentLogDialogProps {
  /** A plan that a log begins with; null to go on with the newest. */
  readonly planned: PlannedFerment | null;
  readonly onClose: () => void;
}

/** Chosen in the list of ferments to begin another. */
const another = 'another';

/** The week of a ferment: what was read, what that says, and what to do with it. */
export function FermentLogDialog({ planned, onClose }: FermentLogDialogProps) {
  const canAct = useBench(mayCommand);
  const { ferments, problem, begin, correct, enter, withdraw } = useFerments();
  const [chosen, setChosen] = useState<string | null>(planned === null ? null : another);
  const shown = chosen ?? ferments?.[0]?.fermentId ?? another;
  const ferment = ferments?.find(({ fermentId }) => fermentId === shown) ?? null;
  return (
    <Dialog title={say('Ferment log')} onClose={onClose}>
      {ferments !== null && ferments.length > 0 && (
        <SelectField
          name={say('Ferment')}
          options={[
            ...ferments.map(({ fermentId, stated }) => ({
              value: fermentId,
              label: say('{name}, begun {began}', {
                name: stated.name,
                began: dateWords(stated.beganAtIso),
              }),
            })),
            ...(canAct ? [{ value: another, label: say('Begin another') }] : []),
          ]}
          value={shown}
          onValue={setChosen}
        />
      )}
      {problem !== null && (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      )}
      {ferment !== null && (
        <OneFerment
          key={ferment.fermentId}
          ferment={ferment}
          canAct={canAct}
          onCorrect={async (stated, reason) =>
            (await correct(ferment.fermentId, stated, reason)) !== null
          }
          onEnter={async (read) => (await enter(ferment.fermentId, read)) !== null}
          onWithdraw={(entryId) => void withdraw(ferment.fermentId, entryId)}
          onClose={onClose}
        />
      )}
      {ferment === null && canAct && (
        <BeginForm
          planned={planned}
          onBegin={async (stated) => setChosen((await begin(stated))?.fermentId ?? another)}
        />
      )}
      {ferment === null && !canAct && <p className="soft">{say('No ferment is kept yet.')}</p>}
      <h3>{say('Cautions')}</h3>
      <CautionLines cautions={cautionsAt('ferment')} />
      <Button onClick={onClose}>{say('Close')}</Button>
    </Dialog>
  );
}

interface OneFermentProps {
  readonly ferment: KeptFerment;
  readonly canAct: boolean;
  readonly onCorrect: Parameters<typeof CorrectForm>[0]['onCorrect'];
  readonly onEnter: Parameters<typeof EntryForm>[0]['onEnter'];
  readonly onWithdraw: (entryId: number) => void;
  readonly onClose: () => void;
}

function OneFerment(props: OneFermentProps) {
  const { ferment, canAct, onCorrect, onEnter, onWithdraw, onClose } = props;
  const { verdict, isJudging } = useJudgement(ferment);
  const [before, setBefore] = useState(verdict);
  if (verdict !== null && verdict !== before) setBefore(verdict);
  const kept = useKeptWarm();
  const watched = useWarmthReport(ferment.fermentId, kept);
  // Nothing stands below what is still to come: it would move under the hand of whoever types.
  const isRead = watched.report !== null || watched.problem !== null;
  const isFirst = before === null && isJudging;
  if (isFirst || !isRead) return <p role="status">{say('Reading the log …')}</p>;
  // While it is judged anew, what was said before keeps its place; where it cannot be judged, nothing does.
  const shown = isJudging ? before : verdict;
  return (
    <>
      {shown === null ? (
        <p className="field-problem" role="alert">
          {say(
            'What stands in this log lies outside what can be judged. Correct what was stated, or withdraw the entry that is wrong.',
          )}
        </p>
      ) : (
        <VerdictShown ferment={ferment} verdict={shown} isJudging={isJudging} />
      )}
      <StatedShown ferment={ferment} onCorrect={canAct ? onCorrect : null} />
      <WeekDrawn
        ferment={ferment}
        endGravity={shown?.expectedEndGravity ?? null}
        warmth={watched.report}
      />
      <WarmthSection ferment={ferment} kept={kept} watched={watched} />
      {canAct && (
        <>
          <h3>{say('Enter what you read')}</h3>
          <EntryForm onEnter={onEnter} />
        </>
      )}
      <EntryList ferment={ferment} canAct={canAct} onWithdraw={onWithdraw} />
      <HandOut ferment={ferment} warmth={watched.report} />
      {shown !== null && (
        <div className={isJudging ? 'ferment-to-come' : ''}>
          <Readiness ferment={ferment} verdict={shown} />
          {canAct && <ChargeButton ferment={ferment} verdict={shown} onCharged={onClose} />}
        </div>
      )}
    </>
  );
}

interface HandOutProps {
  readonly ferment: KeptFerment;
  readonly warmth: WarmthReport | null;
}

/** The week as a table, for whoever wants to plot it, and as a pack: tables, report, worksheets, pictures. */
function HandOut({ ferment, warmth }: HandOutProps) {
  const pack = usePack();
  const heard = heardWarmth(ferment, warmth);
  if (ferment.entries.length === 0 && heard.length === 0) return null;
  const save = () => {
    const table = new Blob([fermentTable(ferment, heard)], { type: 'text/csv' });
    saveFile(`ferment-${ferment.fermentId}.csv`, table);
  };
  return (
    <div className="ferment-acts">
      <Button onClick={save}>{say('Save it as a table (CSV)')}</Button>
      <Button
        disabled={pack.step !== null}
        onClick={() => void pack.makeFerments([ferment.fermentId])}
      >
        {say('Export pack')}
      </Button>
      <PackProgress pack={pack} />
    </div>
  );
}

interface ChargeButtonProps {
  readonly ferment: KeptFerment;
  readonly verdict: FermentVerdict;
  readonly onCharged: () => void;
}

/** Fills Prepare in with this ferment; what it came from goes along into the run. */
function ChargeButton({ ferment, verdict, onCharged }: ChargeButtonProps) {
  const change = usePrepare((state) => state.change);
  const draft = usePrepare((state) => state.draft);
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { low, high } = settingRanges.chargeVolumeMl;
  const { low: weakest, high: strongest } = settingRanges.chargeStrengthAbv;
  const abv = verdict.strengthAbv?.value ?? 0;
  if (abv < weakest || abv > strongest) return null;
  const charge = () => {
    const origin = originOfFerment(ferment, verdict, new Date().toISOString());
    if (origin === null) return;
    const volumeMl = Math.min(high, Math.max(low, ferment.stated.volumeMl));
    change(chargeFrom(origin, volumeMl, draft, decimal));
    onCharged();
  };
  return (
    <div className="ferment-acts">
      <Button onClick={charge}>{say('Charge the still with it')}</Button>
    </div>
  );
}
