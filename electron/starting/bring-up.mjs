/**
 * What `npm start`, `npm test` and the other commands run first: it brings up what is missing, then hands over.
 */
import { join } from 'node:path';
import {
  electronBinary,
  ensureProgram,
  ensurePackages,
  ensurePage,
  fetchElectron,
  hasDisplay,
  node,
  program,
  root,
  runAs,
  say,
  stop,
} from './steps.mjs';

const [command = 'start', ...args] = process.argv.slice(2);
const entry = (...path) => join(root, ...path);

const commands = {
  start() {
    ensurePage();
    ensureProgram();
    if (electronBinary() && hasDisplay()) return openWindow();
    say(whyNoWindow());
    runAs(node, [program('host.mjs'), ...args]);
  },
  window() {
    if (!hasDisplay())
      stop('There is no display to open a window on. Nothing was fetched. npm start serves the program on this computer instead.');
    if (!electronBinary()) fetchElectron();
    ensurePage();
    ensureProgram();
    openWindow();
  },
  call() {
    ensureProgram();
    runAs(node, [program('command-line.mjs'), ...args]);
  },
  page() {
    ensurePage();
  },
  program() {
    ensureProgram();
  },
  build() {
    ensurePage();
    ensureProgram();
  },
  dev() {
    const watched = ['core', 'db', 'electron'].map((room) => `--watch-path=${entry(room)}`);
    runAs(node, ['--watch', ...watched, '--watch-preserve-output', entry('electron', 'starting', 'dev.ts'), ...args]);
  },
  test() {
    ensurePage();
    ensureProgram();
    runAs(node, [entry('tests', 'run.ts'), ...args]);
  },
  long() {
    ensurePage();
    ensureProgram();
    runAs(node, [entry('tests', 'run-long.ts'), ...args]);
  },
  bench() {
    ensurePage();
    runAs(node, [entry('tests', 'bench', 'run.ts'), ...args]);
  },
  learn() {
    runAs(node, [entry('tests', 'reader', 'learn.ts'), ...args]);
  },
  reader() {
    runAs(node, [entry('tests', 'reader', 'report.ts'), ...args]);
  },
  reference() {
    runAs(node, [entry('tests', 'run-reference.ts'), ...args]);
  },
};

function openWindow() {
  runAs(electronBinary(), [program('main.mjs'), ...args]);
}

function whyNoWindow() {
  if (!electronBinary()) {
    return "No window: its binary is not here. npm run window fetches it once (about 120 MB, from the electron project's release host). Until then the program opens in your browser.";
  }
  return 'No window: there is no display here. The program is served to a browser on this computer.';
}

const run = Object.hasOwn(commands, command) ? commands[command] : null;
if (!run) stop(`There is no command ${command}. There are: ${Object.keys(commands).join(', ')}.`);
ensurePackages();
run();
