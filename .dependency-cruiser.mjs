/**
 * The rooms of the workspace: which of our own packages each may import. A room not named here
 * may import nothing of ours.
 */
const rooms = {
  packages: {
    electrics: [],
    evidence: [],
    core: ['electrics', 'evidence'],
    language: ['core'],
    cases: ['core'],
    conversation: ['core', 'language', 'cases', 'drawings'],
    flows: ['core', 'language'],
    drawings: ['core', 'language', 'electrics'],
    sheets: ['core', 'language', 'electrics', 'drawings'],
  },
  adapters: {
    desk: ['element'],
  },
};

/** Packages whose root face runs in a page, so that nothing in them may need Node. */
const browserSafe = [
  'electrics',
  'evidence',
  'core',
  'language',
  'conversation',
  'drawings',
  'sheets',
];

/** What turns files into a flow stands behind the subpath core/load, in files called load... */
const loading = ['^packages/core/src/load', '^packages/core/src/[a-z-]+/load'];

/** PNG files are made by Node alone: behind the subpath drawings/png. */
const png = '^packages/drawings/src/png\\.ts$';

/** A browser prints sheets, with typefaces from disk: behind the subpath sheets/pdf. */
const printing = '^packages/sheets/src/(?:pdf|typefaces)\\.ts$';

const test = '\\.test\\.ts$';

const oneOf = (names) => `(?:${names.join('|')})`;

const mayImport = (from, [name, allowed]) => ({
  name: `${name}-keeps-to-its-room`,
  comment: `${from}/${name} may import ${allowed.join(', ') || 'nothing of ours'}.`,
  severity: 'error',
  from: { path: `^${from}/${name}/`, pathNot: test },
  to: {
    path: '^(?:packages|adapters)/',
    pathNot: `^(?:packages|adapters)/${oneOf([name, ...allowed])}/`,
  },
});

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    ...Object.entries(rooms.packages).map((room) => mayImport('packages', room)),
    {
      name: 'every-package-has-a-room',
      comment: 'A new package names in this file what it may import.',
      severity: 'error',
      from: { path: '^packages/', pathNot: `^packages/${oneOf(Object.keys(rooms.packages))}/` },
      to: {},
    },
    {
      name: 'adapters-never-import-each-other',
      comment: 'Only the desk shows the element; what two adapters share belongs in a package.',
      severity: 'error',
      from: { path: '^adapters/([^/]+)/', pathNot: test },
      to: {
        path: '^adapters/',
        pathNot: ['^adapters/$1/', `^adapters/${oneOf(rooms.adapters.desk)}/`],
      },
    },
    {
      name: 'only-the-desk-shows-the-element',
      severity: 'error',
      from: { path: '^adapters/', pathNot: '^adapters/(?:desk|element)/' },
      to: { path: '^adapters/element/' },
    },
    {
      name: 'through-the-public-face',
      comment: 'Another package is imported by its name, never by a path into its folder.',
      severity: 'error',
      from: { path: '^((?:packages|adapters)/[^/]+)/' },
      to: {
        path: '^(?:packages|adapters)/',
        pathNot: '^$1/',
        dependencyTypes: ['local'],
      },
    },
    {
      name: 'browser-safe',
      comment: 'These packages run in a page, also without signal.',
      severity: 'error',
      from: {
        path: `^packages/${oneOf(browserSafe)}/src/`,
        pathNot: [...loading, png, printing, test],
      },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'loading-stays-behind-its-subpath',
      comment:
        'A root face must not draw in what parses files, compiles schemas or makes PNG files.',
      severity: 'error',
      from: { path: `^packages/${oneOf(browserSafe)}/src/index\\.ts$` },
      to: { path: '(?:^|/)node_modules/(?:ajv|ajv-formats|yaml|@resvg)/', reachable: true },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'resolvable',
      comment: 'Also what a deep path into a package comes to: its exports do not name it.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'declared',
      comment: "A package's own package.json names every library it imports.",
      severity: 'error',
      from: { path: '^(?:packages|adapters)/', pathNot: test },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-dev', 'npm-unknown'] },
    },
  ],
  options: {
    exclude: { path: '/dist/' },
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    combinedDependencies: false,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['source', 'import', 'default'],
      extensions: ['.ts', '.js', '.json'],
    },
  },
};
