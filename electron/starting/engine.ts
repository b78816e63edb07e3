/**
 * How the engine is set before anything runs. A message is read with some 800 patterns, and the engine builds each of them twice: first as steps that it interprets, and
 * from the second use on as machine code. Built at once as code, the first message of a day is read in half the time, and the next ones as quickly.
 * The window gets the same as an argument at its start (`bring-up.mjs`): there the engine takes no settings later.
 */
import { setFlagsFromString } from 'node:v8';

if (process.versions['electron'] === undefined) setFlagsFromString('--no-regexp-tier-up');
