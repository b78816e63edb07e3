/**
 * A process that saves pairs until it is stopped: `writer.ts FOLDER COUNT`. Each pair is one deed with its own key, tried three times.
 * It prints "open", then a line for each pair that was acknowledged ("ok 7") or refused ("no 7 disk full"), and ends with "closed".
 * What ends it before it is open is printed as "refused KIND".
 */
import { writeSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { deedByKey, historyOf, keepDeed, writeHistory } from '../../../db/keeping.ts';
import { openStore } from '../../../db/open.ts';
import type { Store } from '../../../db/store.ts';
import { StoreError } from '../../../db/trouble.ts';
import { FAULTS_NOW, pairKey } from '../moment.ts';

const [folder = '', count = '0'] = process.argv.slice(2);
const say = (line: string) => writeSync(1, `${line}\n`);

function savePair(store: Store, number: number): void {
  store.write((db) => {
    const key = pairKey(number);
    if (deedByKey(db, key)) return;
    for (const half of ['a', 'b'])
      writeHistory(db, { subject: 'pair', subjectId: String(number), deed: half, sentence: 'x'.repeat(2000), at: FAULTS_NOW });
    keepDeed(db, { key, procedure: 'test', inputHash: '', at: FAULTS_NOW, result: {} });
  });
}

function trySaving(store: Store, number: number): void {
  for (let attempt = 1; attempt <= 3; attempt += 1) {
    try {
      savePair(store, number);
      say(`ok ${number}`);
      return;
    } catch (error) {
      if (!(error instanceof StoreError)) throw error;
      say(`no ${number} ${error.kind}`);
    }
  }
}

try {
  const store = await openStore({ folder, now: () => FAULTS_NOW });
  say('open');
  let number = 0;
  while (store.read((db) => historyOf(db, 'pair', String(number))).length > 0) number += 1;
  for (const end = number + Number(count); number < end; number += 1) {
    trySaving(store, number);
    // Lets a signal in.
    if (number % 50 === 0) await wait(0);
  }
  store.close();
  say('closed');
} catch (error) {
  if (!(error instanceof StoreError)) throw error;
  say(`refused ${error.kind}`);
}
