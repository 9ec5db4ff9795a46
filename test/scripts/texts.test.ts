import { expect, test } from 'vitest';
import { textsOf } from '../../scripts/checks/texts.ts';

test('a text is told with its line, its places and what it is: said, for the machine, or anything else', () => {
  const code = [
    "import { say } from './say.ts';",
    "const late = say('Late by {time}', { time: 'a while' });",
    'const file = `At ' + '$' + '{place}: ' + '$' + '{late}.`;',
    'const part = <Say sentence="Wait <b>here</b>" parts={{ b: <p className="soft">now</p> }} />;',
  ].join('\n');
  expect(textsOf('part.tsx', code).map(({ line, words, kind }) => [line, words, kind])).toEqual([
    [1, './say.ts', 'machine'],
    [2, 'Late by {time}', 'said'],
    [2, 'a while', 'other'],
    [3, 'At {}: {}.', 'other'],
    [4, 'Wait <b>here</b>', 'said'],
    [4, 'soft', 'machine'],
    [4, 'now', 'other'],
  ]);
});
