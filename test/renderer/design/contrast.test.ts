import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { stageLooks } from '../../../renderer/design/stage-look.ts';

const tokens = readFileSync(
  path.join(import.meta.dirname, '../../../renderer/design/tokens.css'),
  'utf8',
);

/** The custom properties of one block, with `var(--…)` of the palette followed. */
function propertiesOf(selector: string): ReadonlyMap<string, string> {
  const block = tokens.split(`${selector} {`)[1]?.split('}')[0] ?? '';
  return new Map(
    [...block.matchAll(/--([a-z-0-9]+):\s*([^;]+);/g)].map(([, name = '', value = '']) => [
      name,
      value,
    ]),
  );
}

const palette = propertiesOf(':root');

function colourOf(theme: ReadonlyMap<string, string>, name: string): string {
  const value = theme.get(name) ?? '';
  const named = /^var\(--([a-z-]+)\)$/.exec(value)?.[1];
  return named === undefined ? value : (palette.get(named) ?? '');
}

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

test('the measure gives the two ratios that WCAG states: 21 for black on white, 1 for equals', () => {
  expect([contrast('#000000', '#ffffff'), contrast('#777777', '#777777')]).toEqual([21, 1]);
});

describe.each(['light', 'dark', 'projector'])('the %s theme', (name) => {
  const theme = propertiesOf(`[data-theme="${name}"]`);
  const ratio = (ink: string, paper: string) =>
    contrast(colourOf(theme, ink), colourOf(theme, paper));

  test.each([
    ['ink', 'paper'],
    ['ink', 'sheet'],
    ['ink', 'wash'],
    ['ink', 'act-wash'],
    ['ink', 'advice-wash'],
    ['act', 'act-wash'],
    ['act', 'sheet'],
    ['on-accent', 'accent'],
    ['on-act', 'act'],
  ])('shows %s on %s to the last row: at least 7 to 1', (ink, paper) => {
    expect(ratio(ink, paper)).toBeGreaterThanOrEqual(7);
  });

  test.each([
    ['ink-soft', 'paper'],
    ['ink-soft', 'wash'],
    ['ink-soft', 'sheet'],
    ['accent', 'paper'],
    ['act', 'paper'],
    ['advice', 'paper'],
    ['good', 'wash'],
  ])('shows %s on %s as text: at least 4.5 to 1', (ink, paper) => {
    expect(ratio(ink, paper)).toBeGreaterThanOrEqual(4.5);
  });

  test.each([
    ['rule-strong', 'paper'],
    ['focus', 'paper'],
    ['trace', 'paper'],
    ['band', 'paper'],
    ['fan', 'paper'],
  ])('shows %s on %s as a line: at least 3 to 1', (ink, paper) => {
    expect(ratio(ink, paper)).toBeGreaterThanOrEqual(3);
  });
});

test.each(Object.entries(stageLooks))(
  'the name of %s reads on its colour, as large bold type must: at least 4.5 to 1',
  (_, look) => {
    expect(contrast('#17152b', look.colour)).toBeGreaterThanOrEqual(4.5);
  },
);

test.each(Object.entries(stageLooks))(
  'the name of %s stands out from its halo for the last row: at least 7 to 1',
  (_, look) => {
    const css = readFileSync(
      path.join(import.meta.dirname, '../../../renderer/strip/strip.css'),
      'utf8',
    );
    const percent = /\.stage-name \{[^}]*rgb\(255 255 255 \/ (\d+)%\)/.exec(css)?.[1];
    const share = Number(percent) / 100;
    const halo = [1, 3, 5].map((at) => {
      const channel = Number.parseInt(look.colour.slice(at, at + 2), 16);
      return Math.round(channel + share * (255 - channel))
        .toString(16)
        .padStart(2, '0');
    });
    expect(contrast('#17152b', `#${halo.join('')}`)).toBeGreaterThanOrEqual(7);
  },
);
