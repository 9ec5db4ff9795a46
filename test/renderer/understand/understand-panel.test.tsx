// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { type Film, frameIndexAt } from '../../../renderer/replay/film.ts';
import type { RunView } from '../../../renderer/stores/index.ts';
import { UnderstandPanel, useUnderstanding } from '../../../renderer/understand/index.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

let film: Film;

beforeAll(async () => {
  film = await filmOf(simulatedRecord({ name: 'pear', pressureKPa: 99.4, seed: 1 }));
});
afterEach(cleanup);

function Panel({ view }: { readonly view: RunView }) {
  return <UnderstandPanel view={view} understanding={useUnderstanding(view)} />;
}

function openAt(timeS: number): void {
  renderInWindow(<Panel view={film.frames[frameIndexAt(film, timeS)]!} />);
  fireEvent.click(screen.getByRole('button', { name: 'Understand this moment' }));
}

describe('UnderstandPanel', () => {
  test('opens on demand with three diagrams, each with a sentence that its drawing repeats', () => {
    openAt(1900);
    for (const name of [
      /^Boiling at 99\.4.kPa$/,
      'Plates between pot and head',
      'Strength against recovery so far',
    ]) {
      const figure = screen.getByRole('region', { name });
      const drawing = within(figure).getByRole('img');
      const sentence = figure.querySelector('.figure-sentence')?.textContent;
      expect(drawing.getAttribute('aria-label')).toBe(sentence);
      expect(within(figure).getByRole('table')).toBeTruthy();
    }
    expect(screen.getByText(/the column has lifted it that far/)).toBeTruthy();
    expect(screen.getByText(/32–45.% of the charge’s ethanol has come over/)).toBeTruthy();
  });

  test('the cursor goes back in the run by slider and follows it again by button', () => {
    openAt(1900);
    const follow = screen.getByRole<HTMLButtonElement>('button', { name: 'Follows the run' });
    expect(follow.disabled).toBe(true);
    fireEvent.change(screen.getByRole('slider', { name: 'Cursor' }), { target: { value: '300' } });
    expect(screen.getByText(/No vapour bathes the bulb fully/)).toBeTruthy();
    expect(screen.getByText(/Nothing is booked yet/)).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Follow the run' }));
    expect(screen.getByText(/the column has lifted it that far/)).toBeTruthy();
  });

  test('another reflux can be tried, and is said to be tried', () => {
    openAt(1400);
    fireEvent.click(screen.getByRole('radio', { name: '10' }));
    expect(screen.getAllByText(/With 10 times as much liquid going back/).length).toBeGreaterThan(
      0,
    );
    fireEvent.click(screen.getByRole('radio', { name: 'All back' }));
    expect(screen.getAllByText(/With all liquid going back/).length).toBeGreaterThan(0);
  });

  test('says that the pot is not known, and how it could be', () => {
    const view = film.frames[frameIndexAt(film, 1900)]!;
    const { pot: _, ...tracks } = view.tracks;
    const snapshot = view.snapshot && { ...plainSnapshot(view.snapshot), forecast: null };
    renderInWindow(<Panel view={{ ...view, tracks, marks: [], snapshot }} />);
    fireEvent.click(screen.getByRole('button', { name: 'Understand this moment' }));
    expect(screen.getByText(/What the pot holds by now is not known: book a volume/)).toBeTruthy();
    expect(screen.getByText(/The steps need the pot’s strength/)).toBeTruthy();
  });
});
