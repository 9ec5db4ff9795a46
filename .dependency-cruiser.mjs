/**
 * The layer table of DEVELOPERS.md as a rule the build keeps:
 * app → main → shared-core ← renderer. What is not allowed here is an error.
 */
const inLayer = (layer) => `^${layer}/`;
const anyPackage = '(^|/)node_modules/';
const packages = (names) => `(^|/)node_modules/(@types/)?(${names})(/|$)`;

export default {
  forbidden: [
    {
      name: 'no-circular',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'no-circle-of-types',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'rooms-are-entered-by-their-face',
      comment:
        "Another room's file is imported from the index.ts of that room, or of a room within it.",
      severity: 'error',
      from: { path: '^(shared-core|main|renderer)/([^/]+)/' },
      to: { path: '^$1/[^/]+/.*\\.tsx?$', pathNot: ['^$1/$2/', '^$1/.+/index\\.ts$'] },
    },
    {
      name: 'layers-are-entered-by-their-face',
      comment:
        'Other layers import #shared-core; commands may take what only they need from a room.',
      severity: 'error',
      from: { path: '^(main|renderer|app)/' },
      to: { path: '^shared-core/', pathNot: '^shared-core/index\\.ts$' },
    },
    {
      name: 'commands-enter-rooms-by-their-face',
      severity: 'error',
      from: { path: '^scripts/' },
      to: {
        path: '^shared-core/',
        pathNot: ['^shared-core/index\\.ts$', '^shared-core/.+/index\\.ts$'],
      },
    },
    { name: 'no-unresolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
    {
      name: 'shared-core-imports-only-zod-and-messages',
      severity: 'error',
      from: { path: inLayer('shared-core') },
      to: { pathNot: ['^shared-core/', packages('zod|intl-messageformat')] },
    },
    {
      name: 'main-imports-shared-core-node-and-file-libraries',
      severity: 'error',
      from: { path: inLayer('main') },
      to: {
        path: [
          '^(app|renderer|scripts|test)/',
          packages('electron|react|react-dom|recharts|zustand'),
        ],
      },
    },
    {
      name: 'renderer-imports-shared-core-and-ui-libraries',
      severity: 'error',
      from: { path: inLayer('renderer'), pathNot: 'vite\\.config\\.ts$' },
      to: { path: ['^(app|main|scripts|test)/', packages('electron|serialport|ws')] },
    },
    {
      name: 'renderer-uses-no-node-module',
      severity: 'error',
      from: { path: inLayer('renderer'), pathNot: 'vite\\.config\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'app-imports-no-renderer-source',
      severity: 'error',
      from: { path: inLayer('app') },
      to: { path: ['^(renderer|scripts|test)/'] },
    },
    {
      name: 'electron-only-in-app',
      severity: 'error',
      from: { pathNot: inLayer('app') },
      to: { path: packages('electron') },
    },
    {
      name: 'no-layer-imports-tests',
      severity: 'error',
      from: { pathNot: inLayer('test') },
      to: { path: inLayer('test') },
    },
  ],
  options: {
    doNotFollow: { path: anyPackage },
    exclude: { path: '\\.build/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'test/tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
};
