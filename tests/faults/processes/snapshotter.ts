/**
 * A process that takes one snapshot after another until it is stopped: `snapshotter.ts FOLDER`. Prints "taking" before the first.
 */
import { writeSync } from 'node:fs';
import { openStore } from '../../../db/open.ts';
import { FAULTS_NOW } from '../moment.ts';

const [folder = ''] = process.argv.slice(2);
const store = await openStore({ folder, now: () => FAULTS_NOW });
writeSync(1, 'taking\n');
for (let count = 0; count < 1000; count += 1) await store.snapshot('asked', FAULTS_NOW + count);
