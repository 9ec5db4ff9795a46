import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { mutedColours, stageColours } from '#shared-core';
import { stageLooks } from '../../../renderer/design/stage-look.ts';

/** Paul Tol, "Colour Schemes", SRON/EPS/TN/09-002, issue 3.2 (2021), figures 3 and 4, as printed there. */
const muted =
  '#cc6677 #332288 #ddcc77 #117733 #88ccee #882255 #44aa99 #999933 #aa4499 #dddddd'.split(' ');
const mediumContrastLightRed = '#ee99aa';

const layer = path.join(import.meta.dirname, '../../..');
const tokens = readFileSync(path.join(layer, 'renderer/design/tokens.css'), 'utf8');

describe('colours said to be of a published scheme', () => {
  test('are the scheme’s own, in code and in the style sheet', () => {
    expect([...Object.values(mutedColours)].sort()).toEqual([...muted].sort());
    const named = [...tokens.matchAll(/--tol-[a-z-]+: (#[0-9a-f]{6});/g)].map(([, hex]) => hex);
    expect(named.toSorted()).toEqual([...muted, mediumContrastLightRed].sort());
  });

  test('are those of every stage but one, whose lighter purple is said to be ours', () => {
    const strangers = Object.entries(stageColours).filter(([, hex]) => !muted.includes(hex));
    expect(strangers.map(([stage]) => stage)).toEqual(['first-fraction']);
    const said = readFileSync(path.join(layer, 'shared-core/figures/colours.ts'), 'utf8');
    expect(said).toMatch(/Ours, in no published scheme[^\n]*\n*export const lightPurple/);
  });

  test('are the same for a stage in the window and in print', () => {
    const looks = Object.entries(stageLooks).map(([stage, { colour }]) => [stage, colour]);
    expect(Object.fromEntries(looks)).toEqual(stageColours);
  });
});
