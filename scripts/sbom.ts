/**
 * Prints what is inside the program that people get as a bill of materials (CycloneDX, JSON): npm's own, less the tools of the
 * workshop.
 *
 * Usage: npm run --silent sbom > sbom.json
 */
import { execFileSync } from 'node:child_process';
import path from 'node:path';
import process from 'node:process';
import { z } from 'zod';
import { isEntryPoint } from './checks/is-entry-point.ts';
import { shippedPackages } from './notices/shipped-packages.ts';

const root = path.join(import.meta.dirname, '..');
const largestBillBytes = 64_000_000;

const billSchema = z.looseObject({
  bomFormat: z.literal('CycloneDX'),
  components: z.array(
    z.looseObject({ 'bom-ref': z.string(), name: z.string(), version: z.string() }),
  ),
  dependencies: z.array(z.looseObject({ ref: z.string(), dependsOn: z.array(z.string()) })),
});
export type Bill = z.infer<typeof billSchema>;

/** The bill of the packages that are inside the program. */
export function billOfMaterials(): Bill {
  const { npm_execpath: npm } = process.env;
  const asked = ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only'];
  const [command, given] = npm === undefined ? ['npm', asked] : [process.execPath, [npm, ...asked]];
  const printed = execFileSync(command, given, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: largestBillBytes,
    shell: npm === undefined && process.platform === 'win32',
  });
  const bill = billSchema.parse(JSON.parse(printed));
  const shipped = new Set(shippedPackages(root).map(({ name, version }) => `${name}@${version}`));
  // Development dependencies are optional to npm; those that are built into the window are not.
  const components = bill.components
    .filter((part) => shipped.has(`${part.name}@${part.version}`))
    .map((part) => ({ ...part, scope: 'required' }));
  const refs = new Set(components.map((part) => part['bom-ref']));
  const dependencies = bill.dependencies
    .filter(({ ref }) => refs.has(ref))
    .map((part) => ({ ...part, dependsOn: part.dependsOn.filter((ref) => refs.has(ref)) }));
  return { ...bill, components, dependencies };
}

if (isEntryPoint(import.meta.url)) console.log(JSON.stringify(billOfMaterials(), null, 2));
