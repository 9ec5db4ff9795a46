// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { azeotropeSlopeKPerKPa } from '#shared-core';
import { PressureSection } from '../../../renderer/prepare/pressure-section.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('what a kPa does to the plateau is worked out at the pressure entered', () => {
  renderInWindow(<PressureSection />);
  const lead = () => screen.getByText(/moves the plateau/).textContent?.replaceAll('\u00a0', ' ');
  expect(azeotropeSlopeKPerKPa(101.325).toFixed(2)).toBe('0.25');
  expect(lead()).toContain('by 0.25 K for every kPa');
  fireEvent.click(screen.getByRole('radio', { name: 'Barometer in this room' }));
  fireEvent.click(screen.getByRole('radio', { name: 'hPa' }));
  const entry = screen.getByRole('textbox', { name: /Pressure the barometer shows here/ });
  fireEvent.change(entry, { target: { value: '700' } });
  expect(lead()).toContain(`by ${azeotropeSlopeKPerKPa(70).toFixed(2)} K for every kPa`);
  expect(azeotropeSlopeKPerKPa(70).toFixed(2)).not.toBe('0.25');
});
