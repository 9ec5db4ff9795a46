import { type KeptFerment, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { PackProgress, usePack } from '../exchange/index.ts';
import { dateWords } from '../words/index.ts';
import { useFerments } from './use-ferments.ts';

/** Packed together at most; the newest go first. */
const mostTogether = 30;

interface FermentCardsProps {
  readonly onReplay: (ferment: KeptFerment) => void;
  readonly onClassroom: (ferment: KeptFerment) => void;
}

/** The ferments of this computer beside its runs: to replay, to show and to hand out. */
export function FermentCards({ onReplay, onClassroom }: FermentCardsProps) {
  const { ferments } = useFerments();
  const pack = usePack();
  if (ferments === null || ferments.length === 0) return null;
  const isBusy = pack.step !== null;
  const together = ferments.slice(0, mostTogether);
  return (
    <section aria-label={say('Ferments')}>
      <h2>{say('Ferments')}</h2>
      <ul className="runs" aria-label={say('Ferments, newest first')}>
        {ferments.map((ferment) => {
          const { name, beganAtIso } = ferment.stated;
          return (
            <li key={ferment.fermentId} className="run">
              <div>
                <h3 className="run-name">{name}</h3>
                <p className="soft number">
                  {say('begun {began}', { began: dateWords(beganAtIso) })}
                  {' · '}
                  {say('{count, plural, one {# entry} other {# entries}}', {
                    count: ferment.entries.length,
                  })}
                </p>
              </div>
              <div className="run-acts">
                <Button
                  weight="main"
                  onClick={() => onReplay(ferment)}
                  aria-label={say('Replay {name}', { name })}
                >
                  {say('Replay')}
                </Button>
                <Button
                  onClick={() => onClassroom(ferment)}
                  aria-label={say('Classroom view of {name}', { name })}
                >
                  {say('Classroom view')}
                </Button>
                <Button
                  disabled={isBusy}
                  onClick={() => void pack.makeFerments([ferment.fermentId])}
                  aria-label={say('Export pack of {name}', { name })}
                >
                  {say('Export pack')}
                </Button>
              </div>
            </li>
          );
        })}
      </ul>
      {together.length > 1 && (
        <Button
          disabled={isBusy}
          onClick={() => void pack.makeFerments(together.map(({ fermentId }) => fermentId))}
        >
          {say('Compare them: one pack of these {count}', { count: together.length })}
        </Button>
      )}
      <PackProgress pack={pack} />
    </section>
  );
}
