import { WideTable } from '../understand/index.ts';
import { durationWords } from '../words/index.ts';
import { useWords } from '../words/use-words.ts';
import type { ComparedRun } from './overlay.tsx';
import type { RunFacts } from './run-facts.ts';
import { traceLooks } from './trace-look.ts';
import { TraceSample } from './trace-sample.tsx';

/** The figures of the runs side by side. */
export function CompareTable({ runs }: { readonly runs: readonly ComparedRun[] }) {
  const words = useWords();
  const after = (timeS: number | null) =>
    timeS === null ? '–' : `${durationWords(timeS)} after vapour arrival`;
  const quantity = (value: number | null, decimals: number, unit: string) =>
    value === null ? '–' : words.quantity(value, decimals, unit);
  const rows: readonly (readonly [string, (facts: RunFacts) => string])[] = [
    ['Air pressure', (facts) => quantity(facts.pressureKPa, 1, 'kPa')],
    ['Azeotrope there', (facts) => quantity(facts.azeotropeC, 1, '°C')],
    ['Plateau (median)', (facts) => quantity(facts.plateauC, 1, '°C')],
    [
      'Plateau above the azeotrope',
      ({ plateauC, azeotropeC }) =>
        quantity(plateauC === null || azeotropeC === null ? null : plateauC - azeotropeC, 1, 'K'),
    ],
    [
      'Plateau lasted',
      ({ plateauS }) => (plateauS === null ? 'no plateau' : durationWords(plateauS)),
    ],
    [
      'Main fraction lasted',
      ({ mainFractionS }) =>
        mainFractionS === null ? 'no main fraction' : durationWords(mainFractionS),
    ],
    ['Heat-off prompt', (facts) => after(facts.heatOffCalledS)],
    ['Heat taken off', (facts) => after(facts.heatOffDoneS)],
    ['Collected, as booked', (facts) => quantity(facts.collectedMl, 1, 'mL')],
    ['Limit', (facts) => quantity(facts.leastStrengthAbv, 0, '% vol')],
  ];
  return (
    <WideTable name="Runs side by side">
      <table className="numbers">
        <caption className="unseen">Runs side by side</caption>
        <thead>
          <tr>
            <th scope="col">Run</th>
            {runs.map(({ film }, index) => {
              const look = traceLooks[index];
              return (
                <th key={film.identity.runId} scope="col">
                  {look && <TraceSample look={look} />} {film.identity.name}
                </th>
              );
            })}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {runs.map(({ film, facts }) => (
                <td key={film.identity.runId} className="number">
                  {value(facts)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}
