// Which part may know which. Each folder has a list of what it may import; everything else is forbidden to it, npm
// packages and Node's own modules included. tests/unit/boundaries plants violations and sees each of them caught.

/** @param {string[]} names */
const packages = (...names) => names.map((name) => `(^|/)node_modules/(@types/)?${name.replace('@types/', '')}/`);

/**
 * One entry per folder: what may be imported besides the folder's own files, and why it is so.
 * @type {{ folder: string, except?: string, may: string[], nodeBuiltIns?: boolean, comment: string }[]}
 */
const ALLOWED = [
  { folder: 'lib/units', may: [], comment: 'Quantities are the ground everything stands on; they know nothing.' },
  { folder: 'lib/content', may: packages('zod'), comment: 'Content is data and its schema. Whoever uses it knows it, never the other way round.' },
  { folder: 'lib/reference', may: ['^lib/units/', '^lib/content/model\\.ts$'], comment: 'Dated constants with their sources: units and the shapes of the content, nothing else.' },
  {
    folder: 'lib/core',
    may: ['^lib/units/', '^lib/reference/', '^lib/content/model\\.ts$'],
    comment: 'The calculation is pure: no package, no clock, no file, no network, so that the same input gives the same output everywhere.',
  },
  {
    folder: 'lib/wording',
    may: ['^lib/units/', '^lib/core/(result|document)\\.ts$', '^lib/content/model\\.ts$'],
    comment: 'Words are made out of results; making them calculates nothing.',
  },
  {
    folder: 'lib/report',
    may: ['^lib/units/', '^lib/wording/', '^lib/core/(result|document)\\.ts$', '^lib/content/model\\.ts$'],
    comment: 'A result set out as text. It is handed the result; setting it out calculates nothing and reads nothing.',
  },
  {
    folder: 'lib/charts',
    may: ['^lib/units/', '^lib/wording/', '^lib/core/', '^lib/content/model\\.ts$', ...packages('d3-scale', 'd3-shape')],
    comment: 'The geometry of charts is pure, so that screen and PDF draw the same.',
  },
  {
    folder: 'lib/interchange',
    may: ['^lib/units/', '^lib/content/', '^lib/questionnaire/', '^lib/core/(document|result|version)\\.ts$', ...packages('zod', '@noble/hashes')],
    comment: 'Reads and writes documents in the browser and on the server alike, holding answers to the checks of the questionnaire; it does not calculate.',
  },
  {
    folder: 'lib/questionnaire',
    may: ['^lib/units/', '^lib/content/', '^lib/core/document\\.ts$', '^lib/core/answers/', ...packages('zod')],
    comment: 'Which questions are asked is decided by content and answers alone, without a request or a database.',
  },
  {
    folder: 'lib/papers',
    may: ['^lib/units/', '^lib/wording/', '^lib/charts/', '^lib/core/', '^lib/content/'],
    comment: 'Papers as data: what stands on them. How they are drawn is the affair of the PDF and of the page.',
  },
  { folder: 'lib/access', may: [], comment: 'Who may do what is one table; it knows nothing it could be confused by.' },
  { folder: 'lib/audit', may: packages('zod'), nodeBuiltIns: true, comment: 'Events and their chain of hashes; where they are kept is handed to it.' },
  { folder: 'lib/forms', may: packages('zod'), comment: 'What all forms share: fields, faults, what was typed.' },
  { folder: 'lib/csv', may: packages('papaparse'), comment: 'Tables as text, in and out. The one place where a spreadsheet formula is made harmless.' },
  { folder: 'lib/images', may: packages('sharp', 'file-type'), nodeBuiltIns: true, comment: 'Pictures drawn anew, so that nothing but what is seen is left in them. Who sent them and where they are kept is not its affair.' },
  ...['people', 'places', 'packs', 'assessments', 'incidents', 'sessions', 'events'].map((area) => ({
    folder: `lib/${area}`,
    may: ['^lib/(units|core|content|questionnaire|interchange|wording|access|audit|forms|csv)/', ...packages('zod')],
    comment: 'Decisions of one area, without a database and without another area: state and command in, changes and events out.',
  })),
  { folder: 'lib/today', may: ['^lib/(units|wording|access)/'], comment: 'What needs a person now, out of plain facts that others gathered: one list, so that no two parts of a page contradict each other.' },
  {
    folder: 'lib/pdf',
    may: ['^lib/(units|wording|charts|papers)/', '^lib/core/result\\.ts$', ...packages('react', '@react-pdf/[^/]+', 'fontkit', '@types/fontkit', 'asn1js', '@peculiar/[^/]+', 'qrcode', '@types/qrcode', 'reflect-metadata', 'tsx')],
    nodeBuiltIns: true,
    comment: 'Draws papers, signs and checks files. It is handed plain facts and keys; it knows no database.',
  },
  { folder: 'lib/pdf/structure', may: [], comment: 'Reads and writes the objects of a PDF. Whoever checks files by it must be able to read all of it.' },
  { folder: 'lib/pdf/cms', may: packages('asn1js'), nodeBuiltIns: true, comment: 'Signatures as containers, apart from the files they stand in.' },
  { folder: 'lib/pdf/certificates', may: packages('@peculiar/[^/]+', 'reflect-metadata'), nodeBuiltIns: true, comment: 'Keys and certificates; where they are kept is the affair of others.' },
  { folder: 'lib/pdf/sign', may: ['^lib/pdf/(structure|cms)/'], nodeBuiltIns: true, comment: 'Adds signatures to files, and draws nothing: what is seen of a signature is handed to it.' },
  { folder: 'lib/pdf/verify', may: ['^lib/pdf/(structure|cms|certificates)/'], nodeBuiltIns: true, comment: 'Checks files without the code that draws or signs them.' },
  {
    folder: 'lib/db',
    may: ['^lib/(units|core|content|access|audit|forms|people|places|packs|sessions|today|assessments|incidents|events|papers)/', ...packages('@prisma', 'better-sqlite3', 'pg', 'zod')],
    nodeBuiltIns: true,
    comment: 'The only folder that speaks to a database. It knows the ports it fits, no page and no setting; its address is handed to it.',
  },
  {
    folder: 'lib/server',
    may: ['^lib/', '^package\\.json$', ...packages('server-only', 'next', 'react', 'zod', 'better-auth', '@node-rs/argon2', '@zxcvbn-ts/language-common', 'qrcode', 'fflate')],
    nodeBuiltIns: true,
    comment: 'Where the parts meet: settings, database and use cases. Never part of what is sent to a browser.',
  },
  {
    folder: 'app/_components',
    may: ['^lib/(?!server/|db/)', ...packages('react', 'react-dom', 'react-hook-form', '@hookform/resolvers', 'next')],
    comment: 'Components show what they are handed. They run in the browser, so nothing of the server may come along.',
  },
  {
    folder: 'app',
    except: '^app/_components/',
    may: ['^lib/(?!db/)', '^app/', ...packages('react', 'react-dom', 'react-hook-form', '@hookform/resolvers', 'next', 'zod', '@fontsource-variable/[^/]+')],
    comment: 'Pages are thin: they reach the database through lib/server only.',
  },
];

const LIB_FOLDERS = ALLOWED.map(({ folder }) => folder).filter((folder) => folder.startsWith('lib/'));

const allowLists = ALLOWED.map(({ folder, except, may, nodeBuiltIns, comment }) => ({
  name: `${folder}-knows-only-its-own`,
  comment,
  severity: 'error',
  from: { path: `^${folder}/`, ...(except ? { pathNot: except } : {}) },
  to: { pathNot: [`^${folder}/`, ...may], ...(nodeBuiltIns ? { dependencyTypesNot: ['core'] } : {}) },
}));

const configuration = {
  forbidden: [
    ...allowLists,
    {
      name: 'lib-folders-are-listed',
      comment: 'A new folder below lib begins with its line in the table above; until then it may import nothing.',
      severity: 'error',
      from: { path: '^lib/', pathNot: LIB_FOLDERS.map((folder) => `^${folder}/`) },
      to: { path: '.' },
    },
    {
      name: 'content-model-imports-nothing',
      comment: 'The shapes of the content are known everywhere, also where zod is not allowed.',
      severity: 'error',
      from: { path: '^lib/content/model(\\.ts$|/)' },
      to: { path: '.', pathNot: '^lib/content/model/' },
    },
    {
      name: 'content-model-is-only-types',
      comment: 'Outside of lib/content the model gives types. Values of the content are handed over by whoever loaded it.',
      severity: 'error',
      from: { path: '^lib/', pathNot: '^lib/content/' },
      to: { path: '^lib/content/model\\.ts$', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'content-model-has-one-door',
      comment: 'Which file of the model a shape stands in is the affair of lib/content.',
      severity: 'error',
      from: { pathNot: '^lib/content/' },
      to: { path: '^lib/content/model/' },
    },
    {
      name: 'first-commands-need-no-package',
      comment: 'npm start and npm test run on a bare clone, before anything is installed: Node built-ins only. The one exception asks for a package when the step for packages is long done.',
      severity: 'error',
      from: { path: '^scripts/((start|test|prisma)/|(start|test|build|generate-clients|serve-for-tests)\\.mjs$)', pathNot: '^scripts/test/end-to-end-on-postgresql\\.mjs$' },
      to: { pathNot: '^scripts/(start|test|prisma)/', dependencyTypesNot: ['core'] },
    },
    {
      name: 'scripts-do-not-use-pages',
      comment: 'A command and a page share what is in lib, not each other.',
      severity: 'error',
      from: { path: '^scripts/' },
      to: { path: '^app/' },
    },
    {
      name: 'nobody-imports-scripts',
      comment: 'Scripts are beginnings. What two need belongs in lib. Tests, and the settings of the tests, may look at them.',
      severity: 'error',
      from: { pathNot: '^(scripts|tests)/|^playwright\\.config\\.ts$' },
      to: { path: '^scripts/' },
    },
    {
      name: 'nobody-imports-tests',
      comment: 'Only a test may use what is made for tests.',
      severity: 'error',
      from: { pathNot: '^tests/' },
      to: { path: '^tests/' },
    },
    {
      name: 'no-tools-in-the-program',
      comment: 'A package of devDependencies is not there in a lean installation.',
      severity: 'error',
      from: { path: '^(lib|app)/|^proxy\\.ts$' },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'everything-can-be-found',
      comment: 'An import that leads nowhere is a spelling mistake or a missing package.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'no-circle',
      comment: 'Two files that need each other are one file, or three.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-circle-of-core-folders',
      comment: 'One model builds on another, as risk builds on smoke. Two folders that need each other cannot be read apart.',
      severity: 'error',
      scope: 'folder',
      from: { path: '^lib/core' },
      to: { circular: true },
    },
    {
      name: 'no-orphan',
      comment: 'A file that nothing imports and that imports nothing is dead, or a beginning that belongs in this list.',
      severity: 'error',
      from: { orphan: true, pathNot: ['\\.config\\.(ts|mjs)$', '\\.d\\.ts$', '^\\.dependency-cruiser\\.mjs$'] },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: ['node_modules', '^lib/db/generated/', '^package\\.json$'] },
    exclude: { path: '^(\\.next|data|public|test-results|playwright-report|prisma/composed)/' },
    tsConfig: { fileName: 'tsconfig.json' },
    // Sees `import type` as well: a type of a forbidden folder is knowledge of it.
    tsPreCompilationDeps: true,
    combinedDependencies: false,
    skipAnalysisNotInRules: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'require', 'node', 'default', 'types'], mainFields: ['module', 'main', 'types'] },
  },
};

export default configuration;
