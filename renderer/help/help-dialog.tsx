import { useEffect, useMemo, useRef, useState } from 'react';
import { saidWords, say } from '#shared-core';
import { Button, Dialog } from '../design/index.ts';
import { useBench, usePreferences } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { fillNumbers, helpNumbers } from './help-numbers.ts';
import { type HelpTopic, helpPages, isHelpTopic, pagesWith } from './help-topic.ts';
import { Markdown } from './markdown.tsx';
import { Notices } from './notices.tsx';
import { ProblemReportPage } from './problem-report-page.tsx';

interface HelpDialogProps {
  readonly openAt: HelpTopic;
  readonly onClose: () => void;
}

/** What stands behind the topics; no page of the help, so that no search finds it. */
const otherTitles = {
  'problem-report': say('A problem report'),
  licences: say('Licences'),
} as const;

/** Topics on one side, the page on the other; the search leaves the topics in which every word stands. */
export function HelpDialog({ openAt, onClose }: HelpDialogProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const runsFolder = useBench(({ app }) => app?.runsFolder ?? say('The folder of runs'));
  const canAct = useBench(mayCommand);
  const [shown, setShown] = useState<HelpTopic | 'licences' | 'problem-report'>(openAt);
  const [sought, setSought] = useState('');
  const page = useRef<HTMLElement>(null);
  const pages = useMemo(() => {
    const numbers = Object.fromEntries(
      Object.entries(helpNumbers).map(([name, words]) => [name, saidWords(words, decimal)]),
    );
    const known = { ...numbers, runsFolder: `\`${runsFolder}\`` };
    return helpPages.map((one) => ({ ...one, body: fillNumbers(one.body, known) }));
  }, [decimal, runsFolder]);
  const found = pagesWith(sought, pages);
  // While something is sought, a page that holds it is shown.
  const current =
    sought === '' || found.some(({ topic }) => topic === shown)
      ? pages.find(({ topic }) => topic === shown)
      : (found[0] ?? pages.find(({ topic }) => topic === shown));
  const title = current?.title ?? otherTitles[shown === 'licences' ? shown : 'problem-report'];
  const go = (name: string) => {
    if (isHelpTopic(name)) setShown(name);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new page begins at its top.
  useEffect(() => {
    // In braces: newer browsers answer with a promise, which React would take for a clean-up.
    page.current?.scrollTo(0, 0);
  }, [shown]);
  return (
    <Dialog title={say('Help')} onClose={onClose}>
      <div className="help">
        <div className="help-topics">
          <label className="help-search">
            <span className="field-name">{say('Find in the help')}</span>
            <input
              className="entry"
              type="search"
              value={sought}
              onChange={({ target }) => setSought(target.value)}
            />
          </label>
          <nav aria-label={say('Topics of the help')}>
            <ul>
              {found.map(({ topic, title }) => (
                <TopicEntry
                  key={topic}
                  title={title}
                  isShown={topic === current?.topic}
                  onChosen={() => setShown(topic)}
                />
              ))}
              {sought === '' && canAct && (
                <TopicEntry
                  title={otherTitles['problem-report']}
                  isShown={shown === 'problem-report'}
                  onChosen={() => setShown('problem-report')}
                />
              )}
              {sought === '' && (
                <TopicEntry
                  title={otherTitles.licences}
                  isShown={shown === 'licences'}
                  onChosen={() => setShown('licences')}
                />
              )}
            </ul>
          </nav>
          <p className="small soft" role="status">
            {sought === '' ? '' : foundWords(found.length)}
          </p>
        </div>
        <article
          ref={page}
          className="help-page"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a long page is scrolled by keys.
          tabIndex={0}
          aria-label={title}
        >
          <h3>{title}</h3>
          {current && <Markdown text={current.body} onTopic={go} />}
          {!current && (shown === 'licences' ? <Notices /> : <ProblemReportPage />)}
        </article>
      </div>
      <div className="dialog-acts">
        <Button weight="main" onClick={onClose}>
          {say('Back')}
        </Button>
      </div>
    </Dialog>
  );
}

interface TopicEntryProps {
  readonly title: string;
  readonly isShown: boolean;
  readonly onChosen: () => void;
}

function TopicEntry({ title, isShown, onChosen }: TopicEntryProps) {
  return (
    <li>
      <button
        type="button"
        className="help-topic"
        aria-current={isShown ? 'page' : undefined}
        onClick={onChosen}
      >
        {title}
      </button>
    </li>
  );
}

function foundWords(count: number): string {
  if (count === 0) return say('No page holds all of these words.');
  return count === 1 ? say('One page.') : say('{count} pages.', { count });
}
