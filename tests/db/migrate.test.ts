import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { generateSQLiteDrizzleJson, generateSQLiteMigration } from 'drizzle-kit/api';
import { describe, expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { openStore } from '../../db/open.ts';
import { dump, schemaOf } from '../dump.ts';
import { refusalOf } from '../refusal.ts';
import { NOW, temporaryFolder } from '../store.ts';

const SCHEMA_FOLDER = fileURLToPath(new URL('../../db/schema', import.meta.url));

/** A copy of the migrations that a test may change. */
function copied(): string {
  const folder = temporaryFolder();
  cpSync(MIGRATIONS_FOLDER, folder, { recursive: true });
  return folder;
}
const files = (folder: string) => readdirSync(folder).filter((file) => file.endsWith('.sql'));
const next = (folder: string) => String(files(folder).length).padStart(4, '0');
const open = (folder: string, migrationsFolder = MIGRATIONS_FOLDER) => openStore({ folder, now: () => NOW, migrationsFolder });

async function filled(): Promise<string> {
  const folder = temporaryFolder();
  const store = await open(folder);
  store.write((db) =>
    db.$client.exec("insert into history (id, at, subject, subject_id, deed, sentence) values ('a', 1, 'job', 'b', 'take', 'Taken.')"),
  );
  store.close();
  return folder;
}
function dumpOf(folder: string) {
  const client = new Database(join(folder, 'kitbound.sqlite'), { readonly: true });
  try {
    return dump(client);
  } finally {
    client.close();
  }
}

describe('the ledger of applied migrations', () => {
  test('a store from the future is refused, by its number', async () => {
    const folder = await filled();
    const newer = copied();
    writeFileSync(join(newer, `${next(newer)}_later.sql`), 'CREATE TABLE later (id integer primary key) STRICT;');
    (await open(folder, newer)).close();
    const before = dumpOf(folder);
    const error = await refusalOf(() => open(folder));
    expect(error.kind).toBe('newer version');
    expect(error.what).toContain(`its schema is ${files(newer).length}`);
    expect(dumpOf(folder)).toEqual(before);
  });

  test('an edited migration is refused, but not a change of line ends', async () => {
    const folder = await filled();
    const edited = copied();
    const file = join(edited, files(edited)[0] as string);
    const sql = readFileSync(file, 'utf8');
    writeFileSync(file, sql.replaceAll('\n', '\r\n'));
    (await open(folder, edited)).close();
    writeFileSync(file, `${sql}-- a word more\n`);
    expect(await refusalOf(() => open(folder, edited))).toMatchObject({
      kind: 'migrations differ',
      what: expect.stringContaining('is not the one that built this store'),
    });
  });

  test('a migration that was merged late, under a number that is taken, is refused', async () => {
    const folder = await filled();
    const late = copied();
    const last = files(late).at(-1) as string;
    rmSync(join(late, last));
    writeFileSync(join(late, `${last.slice(0, 4)}_late.sql`), 'CREATE TABLE late (id integer primary key) STRICT;');
    writeFileSync(join(late, `${next(late)}${last.slice(4)}`), readFileSync(join(MIGRATIONS_FOLDER, last)));
    expect(await refusalOf(() => open(folder, late))).toMatchObject({
      kind: 'migrations differ',
      what: expect.stringContaining('in its place'),
    });
  });

  test('a gap is refused, in the folder and in the store', async () => {
    const gap = copied();
    rmSync(join(gap, files(gap)[0] as string));
    expect(await refusalOf(() => open(temporaryFolder(), gap))).toMatchObject({
      kind: 'migrations differ',
      what: expect.stringContaining('gap'),
    });

    const folder = await filled();
    const client = new Database(join(folder, 'kitbound.sqlite'));
    client.exec('delete from applied_migrations where number = 0');
    client.close();
    expect(await refusalOf(() => open(folder))).toMatchObject({ kind: 'migrations differ', what: expect.stringContaining('lacks step 0') });
  });
});

describe('a migration that fails', () => {
  const failing = {
    throws: 'DELETE FROM jobs; CREATE TABLE broken (id nonsense) STRICT;',
    'leaves a broken reference':
      "CREATE TABLE loose (id integer primary key, job_id text references jobs(id)) STRICT; INSERT INTO loose VALUES (1, 'nowhere');",
    'ends its transaction': 'CREATE TABLE early (id integer primary key) STRICT;\nCOMMIT;',
  };
  test.each(Object.entries(failing))('that %s leaves the data as it was, with a snapshot', async (_, sql) => {
    const folder = await filled();
    const before = dumpOf(folder);
    const broken = copied();
    writeFileSync(join(broken, `${next(broken)}_broken.sql`), sql);
    expect((await refusalOf(() => open(folder, broken))).kind).toBe('migration failed');
    expect(dumpOf(folder)).toEqual(before);
    (await open(folder)).close();
    expect(readdirSync(join(folder, 'snapshots')).filter((name) => name.endsWith('.before-migration.sqlite'))).toHaveLength(1);
  });

  test('a new store gets no snapshot', async () => {
    const folder = await filled();
    expect(readdirSync(join(folder, 'snapshots'))).toEqual([]);
  });
});

describe('the schema', () => {
  test('is the same when made at once and when made step by step', () => {
    const known = readMigrations(MIGRATIONS_FOLDER);
    const [atOnce, byStep] = [new Database(':memory:'), new Database(':memory:')];
    migrate(atOnce, known, NOW);
    for (const step of known) migrate(byStep, [step], NOW);
    expect(schemaOf(byStep)).toEqual(schemaOf(atOnce));
    expect(pendingMigrations(byStep, known)).toEqual([]);
  });

  test('has strict tables only', () => {
    const client = new Database(':memory:');
    migrate(client, readMigrations(MIGRATIONS_FOLDER), NOW);
    const loose = client
      .prepare("select name from pragma_table_list where schema = 'main' and type = 'table' and strict = 0 and name not like 'sqlite_%'")
      .pluck()
      .all();
    expect(loose).toEqual([]);
  });

  test('has a migration for everything that the code says', async () => {
    const tables = Object.assign(
      {},
      ...(await Promise.all(readdirSync(SCHEMA_FOLDER).map((file) => import(join(SCHEMA_FOLDER, file))))),
    ) as Record<string, unknown>;
    const last = String(files(MIGRATIONS_FOLDER).length - 1).padStart(4, '0');
    const migrated = JSON.parse(readFileSync(join(MIGRATIONS_FOLDER, 'meta', `${last}_snapshot.json`), 'utf8')) as Parameters<
      typeof generateSQLiteMigration
    >[0];
    expect(await generateSQLiteMigration(migrated, await generateSQLiteDrizzleJson(tables, migrated.id))).toEqual([]);
  });
});
