import { expect, test } from 'vitest';
import { wordsUnsaid } from '../../scripts/check-words.ts';
import { unsaidWords } from '../../scripts/checks/unsaid-words.ts';

test('every word of the window is said in the language of the window', () => {
  expect(wordsUnsaid()).toEqual([]);
});

test('words are found between tags, in attributes, templates and tables, and names for the machine are not', () => {
  const code = `
    const options = [{ value: 'warm-up', label: 'Warm-up' }];
    const file = 'third-party-notices.txt';
    export const Part = ({ at, isLate }: { at: string; isLate: boolean }) => (
      <p className="place lead" data-tone="bad news" title="Why it waits">
        late {isLate ? 'again' : say('Never')} <b>{\`At \${at}, unheard\`}</b> {\`\${at} mL\`}
      </p>
    );`;
  expect(unsaidWords('part.tsx', code).map(({ words }) => words)).toEqual([
    'Warm-up',
    'Why it waits',
    'late',
    'again',
    'At {}, unheard',
  ]);
});
