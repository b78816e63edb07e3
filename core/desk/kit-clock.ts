/**
 * What did not come back with a job is a clock until it is ticked back or marked as missing.
 */
import type { Clock } from '../contract/desk.ts';
import { packInWords, stillOut, type Packed } from '../kit/pack.ts';
import { instantText } from '../time/read.ts';
import { whenWords } from './when.ts';

type Returned = {
  job: { id: string; version: number; title: string };
  /** When one was home again, epoch ms. */
  homeAt: number;
  rows: readonly (Packed & { name: string })[];
};

/** A clock that is late from the return on; nothing before it, and nothing where everything came back. */
export function kitClock({ job, homeAt, rows }: Returned, now: number, homeZone: string): Clock | null {
  const names = packInWords(rows, stillOut);
  if (names === '' || now < homeAt) return null;
  return {
    id: `kit:${job.id}`,
    kind: 'kit',
    at: instantText(homeAt),
    late: true,
    jobId: job.id,
    jobVersion: job.version,
    sentence: `${job.title}: ${names} not ticked back`,
    second: `home again ${whenWords(homeAt, homeZone, now)}; tick them back, or say what did not come back`,
    action: 'open',
  };
}
