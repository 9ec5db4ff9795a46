import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { expect, test } from 'vitest';
import { projectRoot } from '../../scripts/testing/step.ts';

const require = createRequire(import.meta.url);

/** What the packager itself reads and checks; its typed entry does not offer these two. */
const { load } = require('js-yaml') as { load: (text: string) => Record<string, unknown> };
const { validateConfiguration } = require('app-builder-lib/out/util/config/config') as {
  validateConfiguration: (configuration: object, debugLogger: object) => Promise<void>;
};

const configuration = load(readFileSync(path.join(projectRoot, 'electron-builder.yml'), 'utf8'));
const debugLogger = { isEnabled: false, add: () => {} };

test('the packager accepts the configuration, and would not accept a misspelt one', async () => {
  await expect(validateConfiguration(configuration, debugLogger)).resolves.toBeUndefined();
  await expect(
    validateConfiguration({ ...configuration, electronFuse: {} }, debugLogger),
  ).rejects.toThrow('electronFuse');
});

test('the packaged program is no Node, obeys no Node options and loads only its sealed archive', () => {
  expect(configuration.electronFuses).toEqual({
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    grantFileProtocolExtraPrivileges: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    enableCookieEncryption: false,
    resetAdHocDarwinSignature: true,
  });
});

test('native modules, and the fonts that one of them opens, are kept outside the archive', () => {
  expect({ rebuild: configuration.npmRebuild, outside: configuration.asarUnpack }).toEqual({
    rebuild: false,
    outside: ['**/*.node', '**/spawn-helper', '**/@expo-google-fonts/source-sans-3/**'],
  });
});
