/**
 * A process that wants each of many slots: `racer.ts FOLDER COUNT`. Looks and takes in one deed, as often as it gets at the store;
 * prints "won 7" or "lost 7" for each.
 */
import { writeSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { historyOf, writeHistory } from '../../../db/keeping.ts';
import { openStore } from '../../../db/open.ts';
import { StoreBusy } from '../../../db/trouble.ts';
import type { Store } from '../../../db/store.ts';
import { FAULTS_NOW } from '../moment.ts';

const [folder = '', count = '0'] = process.argv.slice(2);

async function openWhenFree(): Promise<Store> {
  for (;;) {
    try {
      return await openStore({ folder, now: () => FAULTS_NOW });
    } catch (error) {
      if (!(error instanceof StoreBusy)) throw error;
      await wait(1);
    }
  }
}

for (let slot = 0; slot < Number(count); slot += 1) {
  const store = await openWhenFree();
  const won = store.write((db) => {
    if (historyOf(db, 'slot', String(slot)).length > 0) return false;
    writeHistory(db, { subject: 'slot', subjectId: String(slot), deed: 'take', sentence: `Taken by ${process.pid}.`, at: FAULTS_NOW });
    return true;
  });
  store.close();
  writeSync(1, `${won ? 'won' : 'lost'} ${slot}\n`);
  await wait(1);
}
