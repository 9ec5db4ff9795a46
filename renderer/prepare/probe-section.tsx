import { useState } from 'react';
import { type PortInfo, type ProbeStatus, type ServiceProblem, say } from '#shared-core';
import { CalibrationWalk } from '../calibrate/index.ts';
import { Button, ChoiceField } from '../design/index.ts';
import { assumedAfter, probeKinds, useDraftFields } from '../draft/index.ts';
import { useBench, useWindowParts } from '../parts/index.ts';
import { FindSpeech } from '../probe/index.ts';
import type { ProbeKind } from '../stores/index.ts';
import { isAboutProbe } from '../stores/index.ts';
import { inMidSentence, problemWords, signs } from '../words/index.ts';
import { More } from './more.tsx';
import { OthersCalibration } from './others-calibration.tsx';
import { PortPath } from './port-path.tsx';
import { ProbeHeard } from './probe-heard.tsx';

const kinds = (Object.keys(probeKinds) as ProbeKind[]).map((kind) => ({
  value: kind,
  label: probeKinds[kind].label,
}));

export function ProbeSection({ canAct }: { readonly canAct: boolean }) {
  const { commands } = useWindowParts();
  const ports = useBench((bench) => bench.ports);
  const probe = useBench((bench) => bench.probe);
  const problem = useBench((bench) => (isAboutProbe(bench.problem) ? bench.problem : null));
  const { draft, change } = useDraftFields();
  const kind = probeKinds[draft.probeKind].label;
  const isKindAssumed = draft.assumed.includes('probe-kind');
  const [showsAll, setShowsAll] = useState(false);
  const shown = showsAll ? ports : ports.filter(({ likelyProbe }) => likelyProbe);
  const hidden = ports.length - shown.length;
  // A device that was understood before is spoken to in the same way.
  const connect = (path: string) => {
    const known = ports.find((port) => port.path === path)?.remembered;
    void commands.connect({ kind: 'serial', ...known, path });
  };
  return (
    <div className="prepare-fields">
      <div className="field">
        <p className="field-name" id="ports-name">
          {say('Ports on this computer')}
        </p>
        {shown.length === 0 ? (
          <p className="soft">
            {say('No port with a probe on it. Plug the probe in and it appears here by itself.')}
          </p>
        ) : (
          <ul className="ports" aria-labelledby="ports-name">
            {shown.map((port) => (
              <li key={port.path}>
                <Button
                  disabled={!canAct}
                  aria-pressed={probe?.path === port.path}
                  onClick={() => connect(port.path)}
                >
                  {portWords(port)}
                </Button>
              </li>
            ))}
          </ul>
        )}
        {hidden > 0 && (
          <Button className="ports-more" weight="quiet" onClick={() => setShowsAll(true)}>
            {say('Show {hidden} more without a USB name', { hidden })}
          </Button>
        )}
      </div>
      <PortPath canAct={canAct} onPath={connect} />
      {problem && !probe?.problem && !isSaidOf(probe, problem) && (
        <p className="field-problem field-wide" role="alert">
          {problemWords(problem)}
        </p>
      )}
      <ProbeHeard probe={probe} canAct={canAct} />
      <FindSpeech probe={probe} canAct={canAct} />
      <OthersCalibration />
      <More
        summary={`${isKindAssumed ? `${signs.toDo} ${say('{kind}, assumed', { kind })}` : kind} · ${draft.correction ? say('calibrated') : say('not calibrated')}`}
      >
        <div className="field-wide">
          <ChoiceField
            name={say('Kind of probe')}
            options={kinds}
            value={isKindAssumed ? null : draft.probeKind}
            onValue={(value) =>
              change({ probeKind: value, assumed: assumedAfter('probeKind', draft) })
            }
          />
          {isKindAssumed && (
            <p className="small" role="status">
              {signs.toDo}{' '}
              {say(
                'Assumed, nobody has stated it yet: {kind}. How well the head is known, and how fast it is followed, hang on it.',
                { kind: inMidSentence(kind) },
              )}
            </p>
          )}
        </div>
        <details className="why field-wide">
          <summary>
            {draft.correction ? say('Calibrated') : say('Calibrate with ice and steam')}
          </summary>
          <CalibrationWalk />
        </details>
      </More>
    </div>
  );
}

/** Whether the same is said of the probe that did not come back. */
function isSaidOf(probe: ProbeStatus | null, problem: ServiceProblem): boolean {
  const notBack = probe?.notBack;
  return notBack !== undefined && problemWords(notBack.problem) === problemWords(problem);
}

function portWords({ path, manufacturer, serialNumber }: PortInfo): string {
  const maker = manufacturer ? ` · ${manufacturer}` : '';
  return `${path}${maker}${serialNumber ? ` · ${serialNumber}` : ''}`;
}
