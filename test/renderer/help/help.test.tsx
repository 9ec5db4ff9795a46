// @vitest-environment happy-dom
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { fillNumbers, helpNumbers } from '../../../renderer/help/help-numbers.ts';
import { helpPages, isHelpTopic, pagesWith, topicFor } from '../../../renderer/help/help-topic.ts';
import { Markdown } from '../../../renderer/help/markdown.tsx';
import { safetyLooks } from '../../../renderer/prepare/safety-checks.ts';
import { clockWords } from '../../../renderer/words/index.ts';

afterEach(cleanup);

const renderer = path.join(import.meta.dirname, '../../../renderer');
const pageTexts = helpPages.map(({ title, body }) => `${title}\n${body}`).join('\n');

describe('the pages of the help', () => {
  test('answer what a new person asks, in this order', () => {
    expect(helpPages.map(({ topic }) => topic)).toEqual([
      'first-run',
      'probe',
      'ports',
      'meaning',
      'limits',
      'sound',
      'runs',
      'questions',
    ]);
  });

  test('take every number from where the program has it, and use all that are offered', () => {
    const asked = new Set([...pageTexts.matchAll(/\{\{(\w+)\}\}/g)].map(([, name]) => name));
    expect([...asked].sort()).toEqual([...Object.keys(helpNumbers), 'runsFolder'].sort());
    expect(fillNumbers('{{slopePerKPa}}, {{nobody}}', helpNumbers)).toBe('0.25 K, {{nobody}}');
  });

  test('name buttons and headings as the window does', () => {
    const sources = readdirSync(renderer, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file) && !file.startsWith('help'))
      .map((file) => readFileSync(path.join(renderer, file), 'utf8').replace(/\s+/g, ' '))
      .join('\n');
    const named = [...pageTexts.matchAll(/(?<!\w)_([^_\n]+)_(?!\w)/g)].map(([, name = '']) => name);
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((name) => !sources.includes(name))).toEqual([]);
  });

  test('count the looks before heat, and write the time that is saved, as the window does', () => {
    expect(safetyLooks).toHaveLength(7);
    expect(pageTexts).toContain('The seven looks under _Before heat_');
    expect(pageTexts).toContain(`**Saved to ${clockWords(750)}.**`);
  });

  test('name the keys of Watch as its buttons do', () => {
    const buttons = ['mark-bar.tsx', 'drops-button.tsx']
      .map((file) => readFileSync(path.join(renderer, 'watch', file), 'utf8'))
      .join('\n');
    const acts = [...buttons.matchAll(/\bkey: '([a-z])'/g)].map(([, key]) => key);
    const named = /\*\*Keys in Watch:\*\*(.*)/.exec(pageTexts)?.[1] ?? '';
    const keys = [...named.matchAll(/`([a-z])` /g)].map(([, key]) => key);
    expect(acts.length).toBeGreaterThan(5);
    expect(keys.sort()).toEqual([...new Set(acts)].sort());
  });

  test('link only to one another', () => {
    const targets = [...pageTexts.matchAll(/\]\(([^)]*)\)/g)].map(([, target = '']) => target);
    expect(targets.filter((target) => !isHelpTopic(target.replace(/^#/, '')))).toEqual([]);
  });

  test('open where one is, and at the ports while one is in trouble', () => {
    expect([
      topicFor('prepare', false),
      topicFor('watch', false),
      topicFor('look-back', false),
      topicFor('prepare', true),
    ]).toEqual(['first-run', 'meaning', 'runs', 'ports']);
  });

  test('are found by all words that are sought, wherever they stand', () => {
    const found = (sought: string) => pagesWith(sought, helpPages).map(({ topic }) => topic);
    expect(found('UUCP group')).toEqual(['ports']);
    expect(found('second screen')).toContain('questions');
    expect(found('')).toHaveLength(helpPages.length);
    expect(found('zyzzyva')).toEqual([]);
  });
});

describe('markdown as elements', () => {
  const show = (text: string, onTopic: (name: string) => void = () => {}) =>
    render(<Markdown text={text} onTopic={onTopic} />);

  test('keeps lists, tables with headers for rows and columns, and commands', () => {
    show(
      '1. **One** *two* `three`\n\n| kind | lag |\n| --- | --- |\n| wire | 3 |\n\n```\nsudo\n```',
    );
    expect(within(screen.getByRole('list')).getByText('One').tagName).toBe('STRONG');
    expect(screen.getByRole('columnheader', { name: 'lag' })).toBeTruthy();
    expect(screen.getByRole('rowheader', { name: 'wire' })).toBeTruthy();
    expect(screen.getByText('sudo').tagName).toBe('CODE');
  });

  test('follows links between pages, and shows foreign addresses and markup as words', () => {
    const followed: string[] = [];
    const { container } = show(
      '[ports](#ports) [away](https://example.org) <img src="x">',
      (name) => followed.push(name),
    );
    fireEvent.click(screen.getByRole('button', { name: 'ports' }));
    expect(followed).toEqual(['ports']);
    expect([...container.querySelectorAll('a, img')]).toEqual([]);
    expect(container.textContent).toContain('away');
  });
});
