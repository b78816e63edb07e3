/**
 * What must be there before the program runs: the packages of the lock, the Node that came with them, the built page.
 * Plain JavaScript, because the Node that runs this may be as old as 18.
 */
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));
const at = (...path) => join(root, ...path);
const isWindows = process.platform === 'win32';

/** The Node that the lock names, whatever Node runs this file. */
export const node = at('node_modules', 'node', 'bin', isWindows ? 'node.exe' : 'node');
const electronDist = at('node_modules', 'electron', 'dist');

/** A sentence for the person, apart from what a command answers on its standard output. */
export const say = (sentence) => process.stderr.write(`${sentence}\n`);

/** Stop with a sentence. */
export function stop(sentence) {
  say(sentence);
  process.exit(1);
}

/** Install what the lock names, when it is not there. */
export function ensurePackages() {
  const lock = readFileSync(at('package-lock.json'));
  const stamp = at('node_modules', '.kitbound-lock');
  const wanted = createHash('sha256').update(lock).digest('hex');
  if (readOr(stamp, '') === wanted && existsSync(node)) return;
  if (!isInstalled(JSON.parse(lock.toString('utf8'))) || !existsSync(node)) {
    say('Fetching the packages that the lock names; this is done once.');
    const npm = process.env.npm_execpath;
    const args = ['ci', '--no-audit', '--no-fund', '--loglevel=error'];
    const done = npm
      ? spawnSync(process.execPath, [npm, ...args], { cwd: root, stdio: ['ignore', 2, 2] })
      : spawnSync('npm', args, { cwd: root, stdio: ['ignore', 2, 2], shell: isWindows });
    if (done.status !== 0) stop('The packages could not be fetched. Nothing else was changed. Look at the lines above, then start again.');
  }
  const temporal = spawnSync(node, ['-p', 'typeof Temporal'], { encoding: 'utf8' });
  if (temporal.stdout?.trim() !== 'object') {
    stop(
      'This Node has no Temporal, which all dates are computed with. Kitbound needs Node 26, which comes with its packages: run npm ci and look at its warnings.',
    );
  }
  writeFileSync(stamp, wanted);
}

/** True when npm's own record of what is installed has every package of the lock that this system takes. */
function isInstalled(lock) {
  const installed = JSON.parse(readOr(at('node_modules', '.package-lock.json'), '{"packages":{}}')).packages;
  return Object.entries(lock.packages).every(
    ([path, entry]) => path === '' || entry.optional || entry.devOptional || installed[path]?.version === entry.version,
  );
}

/** Build the page when its sources changed. */
export function ensurePage() {
  const sources = ['renderer', 'core', 'assets/fonts', 'vite.config.ts', 'package-lock.json'];
  buildWhenChanged('renderer', sources, [['--config', 'vite.config.ts', '--emptyOutDir']]);
}

/** Build the doors and the preload when their sources changed. */
export function ensureProgram() {
  const sources = ['electron', 'db', 'core', 'assets/sample', 'vite.program.config.ts', 'package-lock.json'];
  const config = ['--config', 'vite.program.config.ts'];
  buildWhenChanged('program', sources, [
    [...config, '--emptyOutDir'],
    [...config, '--mode', 'preload'],
  ]);
}

/** A built file of the program. */
export const program = (name) => at('build', 'program', name);

/** The new build takes the old one's place only when it is whole. */
function buildWhenChanged(name, sources, builds) {
  const wanted = hashOf(sources);
  const target = at('build', name);
  const stamp = at('build', `${name}.hash`);
  if (readOr(stamp, '') === wanted && existsSync(target)) return;
  const fresh = at('build', `${name}-${process.pid}`);
  mkdirSync(at('build'), { recursive: true });
  for (const options of builds) {
    const args = [at('node_modules', 'vite', 'bin', 'vite.js'), 'build', ...options, '--outDir', fresh, '--logLevel', 'warn'];
    const done = spawnSync(node, args, { cwd: root, stdio: ['ignore', 2, 2] });
    if (done.status === 0) continue;
    rmSync(fresh, { recursive: true, force: true });
    stop(`Building ${name} failed. The build from before was kept. Look at the lines above.`);
  }
  takePlace(fresh, target);
  writeFileSync(stamp, wanted);
}

/** Put a whole build in the place of the one before. Whoever builds the same at the same time may come first. */
function takePlace(fresh, target) {
  const old = `${fresh}-old`;
  try {
    if (existsSync(target)) renameSync(target, old);
    renameSync(fresh, target);
  } catch (error) {
    if (!existsSync(target)) throw error;
  }
  for (const left of [old, fresh]) rmSync(left, { recursive: true, force: true });
}

function hashOf(sources) {
  const hash = createHash('sha256');
  for (const file of sources.flatMap((source) => filesUnder(at(source)))) {
    hash.update(`${relative(root, file)}\0`).update(readFileSync(file));
  }
  return hash.digest('hex');
}

function filesUnder(path) {
  if (!existsSync(path)) return [];
  let entries;
  try {
    entries = readdirSync(path, { withFileTypes: true });
  } catch {
    return [path];
  }
  return entries.sort((a, b) => (a.name < b.name ? -1 : 1)).flatMap((entry) => filesUnder(join(path, entry.name)));
}

/** Where the window's binary lies, or null when it was not fetched. */
export function electronBinary() {
  const name = readOr(join(dirname(electronDist), 'path.txt'), '').trim();
  const binary = join(electronDist, name || 'electron');
  return name !== '' && existsSync(binary) ? binary : null;
}

/** Fetch the window's binary, on purpose and once. */
export function fetchElectron() {
  say("Fetching the window's binary, about 120 MB, from the electron project's release host.");
  const done = spawnSync(node, [at('node_modules', 'electron', 'install.js')], { cwd: root, stdio: ['ignore', 2, 2] });
  if (done.status !== 0 || !electronBinary())
    stop('The binary could not be fetched. Nothing else was changed. npm start serves the program in your browser without it.');
}

/** True where a window can be shown. */
export function hasDisplay() {
  if (process.platform === 'darwin' || isWindows) return true;
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/** Run a program in the foreground: it gets our signals, and we end as it ended. */
export function runAs(file, args) {
  // What the engine made of the code is kept beside the build, so that the next start is quicker.
  const env = { NODE_COMPILE_CACHE: at('build', 'compiled'), ...process.env };
  const child = spawn(file, args, { stdio: 'inherit', env });
  // Ctrl+C reaches the child by itself; a signal sent to us alone must be passed on.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
  child.on('error', () => stop(`${relative(root, file)} could not be started. Run npm ci and try again.`));
  child.on('exit', (code, signal) => process.exit(code ?? (signal ? 1 : 0)));
}

function readOr(file, otherwise) {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return otherwise;
  }
}
