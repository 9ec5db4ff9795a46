// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepFocus } from '../../../renderer/window/keep-focus.ts';

let end = () => {};

beforeEach(() => {
  vi.useFakeTimers();
  document.body.innerHTML =
    '<main id="place"><h1>Watch</h1><section><h2>Prompts</h2><button>Seen</button></section></main>';
  end = keepFocus(document);
});
afterEach(() => {
  end();
  vi.useRealTimers();
});

const seen = () => document.querySelector('button') as HTMLButtonElement;
const focused = () => document.activeElement?.textContent;
/** Whoever observes the page has been told, and what gives the focus back by itself has had its time. */
const settle = () => vi.advanceTimersByTimeAsync(1000);

test('what had the focus goes: the heading of the nearest part that is still there takes it, and is no stop of the keyboard afterwards', async () => {
  seen().focus();
  seen().remove();
  await settle();
  expect(focused()).toBe('Prompts');
  document.querySelector('section')?.remove();
  await settle();
  expect(focused()).toBe('Watch');
  (document.activeElement as HTMLElement).blur();
  expect(document.querySelector('[tabindex]')).toBe(null);
});

test('the whole place goes: the heading of the one that came instead takes it', async () => {
  seen().focus();
  document.body.innerHTML = '<main id="place"><h1>Books</h1></main>';
  await settle();
  expect(focused()).toBe('Books');
});

test('what is out of use while its act is under way has the focus again when it comes back', async () => {
  seen().focus();
  // As browsers do, which take the focus from what is out of use.
  seen().blur();
  seen().disabled = true;
  await settle();
  expect(document.activeElement).toBe(document.body);
  seen().disabled = false;
  await settle();
  expect(focused()).toBe('Seen');
});

test('whoever presses the empty page, or has gone on already, is left there', async () => {
  seen().focus();
  seen().blur();
  await settle();
  seen().remove();
  await settle();
  expect(document.activeElement).toBe(document.body);

  document.body.innerHTML = '<main id="place"><h1>Books</h1><button>Seen</button><input></main>';
  seen().focus();
  seen().remove();
  document.querySelector('input')?.focus();
  await settle();
  expect(document.activeElement?.tagName).toBe('INPUT');
});
