import path from 'node:path';
import { expect, test } from 'vitest';
import { shippedPackages } from '../../scripts/notices/shipped-packages.ts';
import { billOfMaterials } from '../../scripts/sbom.ts';

test('the bill of materials names every package inside the program, with its version, and no tool of the workshop', () => {
  const { components, dependencies } = billOfMaterials();
  const shipped = shippedPackages(path.join(import.meta.dirname, '..', '..'));
  const listed = (parts: readonly { readonly name: string; readonly version: string }[]) =>
    [...new Set(parts.map(({ name, version }) => `${name}@${version}`))].sort();
  expect(listed(components)).toEqual(listed(shipped));
  expect(components.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['react', 'serialport']),
  );
  expect(components.map(({ name }) => name)).not.toContain('vitest');
  const refs = components.map((part) => part['bom-ref']);
  expect(
    dependencies.flatMap(({ dependsOn }) => dependsOn).filter((ref) => !refs.includes(ref)),
  ).toEqual([]);
});
