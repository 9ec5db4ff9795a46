// @vitest-environment happy-dom
import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { cautionsAt } from '#shared-core';
import { ProofForm } from '../../../renderer/proof/proof-form.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const conditions = cautionsAt('proof');

function show(isKept = true) {
  const onMark = vi.fn(async () => isKept);
  renderInWindow(<ProofForm cuts={3} canAct onMark={onMark} />);
  return onMark;
}
const boxes = () => screen.getAllByRole<HTMLInputElement>('checkbox');
const confirm = (howMany: number) => {
  for (const box of boxes().slice(0, howMany)) fireEvent.click(box);
};
const keep = () => screen.queryByRole('button', { name: 'Keep it in the record' });
const pressKeep = () => act(async () => fireEvent.click(keep() as HTMLElement));
const typeVolume = (value: string) =>
  fireEvent.change(screen.getByLabelText('Volume burned'), { target: { value } });

describe('proving by burning a sample', () => {
  test('says every condition of the list before it, and no other', () => {
    show();
    expect([...document.querySelectorAll('li')].map(({ textContent }) => textContent)).toEqual(
      conditions.map(({ act: what, because }) => `${what}${because}`),
    );
  });

  test('keeps nothing before the last condition is confirmed', () => {
    show();
    confirm(conditions.length - 1);
    expect(keep()).toBeNull();
    expect(screen.getByRole('status').textContent).toBe('Light nothing yet: confirm 1 more.');
    fireEvent.click(boxes().at(-1) as HTMLElement);
    expect(keep()).not.toBeNull();
  });

  test('keeps what was seen with who did it and what was confirmed, and asks anew for the next', async () => {
    const onMark = show();
    fireEvent.click(screen.getByLabelText('Technician'));
    confirm(conditions.length);
    fireEvent.change(screen.getByLabelText('Sample from'), { target: { value: '2' } });
    typeVolume('0,8');
    fireEvent.click(screen.getByLabelText('burned and went out'));
    await pressKeep();
    expect(onMark.mock.calls).toEqual([
      [
        {
          type: 'proof-burned',
          cut: 2,
          volumeMl: 0.8,
          seen: 'burned-and-went-out',
          role: 'technician',
          confirmed: conditions.map(({ id }) => id),
        },
      ],
    ]);
    expect([keep(), boxes().filter(({ checked }) => checked)]).toEqual([null, []]);
  });

  test.each(['', '0', '1.2', 'one'])('takes no more than 1 mL, and no “%s”', async (volume) => {
    const onMark = show();
    confirm(conditions.length);
    typeVolume(volume);
    await pressKeep();
    expect(onMark).not.toHaveBeenCalled();
    expect(screen.getByText(/at most 1 mL/)).toBeTruthy();
  });

  test('what could not be kept stays as it was typed', async () => {
    show(false);
    confirm(conditions.length);
    typeVolume('1');
    await pressKeep();
    expect(screen.getByLabelText<HTMLInputElement>('Volume burned').value).toBe('1');
  });
});
