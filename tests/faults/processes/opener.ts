/**
 * A process that opens a store and holds it until it is stopped: `opener.ts FOLDER [MIGRATIONS]`. Prints "opening", then "open", or
 * "refused KIND".
 */
import { writeSync } from 'node:fs';
import { openStore } from '../../../db/open.ts';
import { StoreError } from '../../../db/trouble.ts';
import { FAULTS_NOW } from '../moment.ts';

const [folder = '', migrationsFolder] = process.argv.slice(2);
writeSync(1, 'opening\n');
try {
  const store = await openStore({ folder, now: () => FAULTS_NOW, ...(migrationsFolder && { migrationsFolder }) });
  writeSync(1, 'open\n');
  process.stdin.on('end', () => {
    store.close();
    process.exit(0);
  });
  process.stdin.resume();
} catch (error) {
  if (!(error instanceof StoreError)) throw error;
  writeSync(1, `refused ${error.kind}\n`);
}
