import { measuredWords, type Quantity, say } from '#shared-core';
import { StackingTable } from '../design/index.ts';
import { dateWords, durationWords, lastedWords, useWords } from '../words/index.ts';
import type { ComparedRun } from './overlay.tsx';
import type { RunFacts } from './run-facts.ts';
import { traceLooks } from './trace-look.ts';
import { TraceSample } from './trace-sample.tsx';

/** The figures of the runs side by side. */
export function CompareTable({ runs }: { readonly runs: readonly ComparedRun[] }) {
  const words = useWords();
  const lasting = (timeS: number | null) => (timeS === null ? '–' : durationWords(timeS));
  const measured = (value: Quantity | undefined, unit: string) =>
    value === undefined ? '–' : words.said(measuredWords(value, unit));
  const quantity = (value: number | null, decimals: number, unit: string) =>
    value === null ? '–' : words.quantity(value, decimals, unit);
  const rows: readonly (readonly [string, (facts: RunFacts) => string])[] = [
    [say('Air pressure'), ({ pressureKPa }) => measured(pressureKPa, 'kPa')],
    [say('Azeotrope there'), ({ azeotropeC }) => measured(azeotropeC ?? undefined, '°C')],
    [say('Plateau'), ({ plateau }) => measured(plateau?.mean, '°C')],
    [say('Plateau above the azeotrope'), ({ plateau }) => measured(plateau?.aboveAzeotropeK, 'K')],
    [
      say('Plateau lasted'),
      ({ plateau }) => (plateau === null ? say('no plateau') : lastedWords(plateau.lastedS)),
    ],
    [
      say('Main fraction lasted'),
      ({ mainFractionLastedS }) =>
        mainFractionLastedS === null ? say('no main fraction') : lastedWords(mainFractionLastedS),
    ],
    [say('Heat-off prompt, after vapour arrival'), (facts) => lasting(facts.heatOffCalledS)],
    [say('Heat taken off, after vapour arrival'), (facts) => lasting(facts.heatOffDoneS)],
    [
      say('Collected, as booked'),
      ({ collected }) => {
        const figure = measured(collected?.volumeMl, 'mL');
        return collected?.isWhole === false ? say('{figure} or more', { figure }) : figure;
      },
    ],
    [say('Limit'), (facts) => quantity(facts.leastStrengthAbv, 0, '% vol')],
  ];
  // Runs of one lesson plan have one name: the date tells them apart.
  const began = runs.map(({ film: { identity } }) => {
    const date = identity.startedAtIso === null ? '–' : dateWords(identity.startedAtIso);
    return identity.isImported === true ? say('{date}, imported', { date }) : date;
  });
  const columns = runs.map(({ film }, index) => {
    const look = traceLooks[index];
    return {
      key: film.identity.runId,
      label: look ? `${look.letter} ${look.sign}` : film.identity.name,
      title: (
        <span className="run-title">
          {look && <TraceSample look={look} />} {film.identity.name}
        </span>
      ),
    };
  });
  return (
    <StackingTable
      name={say('Runs side by side')}
      corner={say('Run')}
      hasLegend
      columns={columns}
      rows={[
        { name: say('Began'), cells: began },
        ...rows.map(([name, value]) => ({ name, cells: runs.map(({ facts }) => value(facts)) })),
      ]}
    />
  );
}
