/**
 * Make a migration from what changed in db/schema: `npm run migration -- NAME`, or `-- NAME --custom` for an empty file to write SQL in.
 * drizzle-kit writes plain tables; every table of ours is STRICT, so the word is added here.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = join(root, 'migrations');
const [name, ...flags] = process.argv.slice(2);
if (!name || !/^[a-z][a-z0-9_]*$/.test(name)) {
  console.error('Give the migration a name in small letters: npm run migration -- add_legs');
  process.exit(2);
}

const files = () => readdirSync(folder).filter((file) => file.endsWith('.sql'));
const before = new Set(files());
const kit = join(root, 'node_modules', 'drizzle-kit', 'bin.cjs');
const made = spawnSync(process.execPath, [kit, 'generate', '--name', name, ...flags], { cwd: root, stdio: 'inherit' });
if (made.status !== 0) process.exit(made.status ?? 1);

for (const file of files().filter((each) => !before.has(each))) {
  const sql = readFileSync(join(folder, file), 'utf8');
  writeFileSync(join(folder, file), `${sql.replaceAll(/^\);?$/gm, ') STRICT;').trimEnd()}\n`);
  console.log(`migrations/${file}`);
}
