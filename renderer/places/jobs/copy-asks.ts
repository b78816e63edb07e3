/**
 * Messages that ask whether something that is tried on holds, put on the clipboard.
 */
import type { Job } from '../../../core/contract/jobs.ts';
import type { TryOn } from '../../../core/contract/try-on.ts';
import { askHandText } from '../../../core/people/ask-hand.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { copyText } from '../../parts/copy.ts';
import { askFor } from './hands/said.ts';

/** What is asked stays tried on until it is answered, so these are never done. A hand who is asked is noted on the job too. */
const copied = async (text: string): Promise<false> => {
  say((await copyText(text)) ? 'Copied. Paste it into a message to them; nothing is booked yet.' : `Your message: ${text}`);
  return false;
};

export async function copyAskHand(job: Job, hands: NonNullable<TryOn['hands']>): Promise<false> {
  const [asked] = hands;
  const { place } = job;
  if (!asked || !place) return false;
  const known = await deed(async () => ({
    hand: (await client.people.hand({ id: asked.handId })).hand,
    from: (await client.setup.get({})).setup?.name ?? '',
  }));
  if (!known) return false;
  const days = job.days.filter(({ date }) => asked.dates.includes(date));
  const message = askHandText({ ...known, role: job.role, place, days });
  await askFor({ jobId: job.id, handId: asked.handId, name: known.hand.name }, asked.dates, message);
  return false;
}

export function copyStillOpen({ title, contact }: Job): Promise<false> {
  const name = contact.name.split(' ')[0] ?? '';
  return copied(`Hello${name ? ` ${name}` : ''},\n\nis ${title} still open? I missed your date for an answer and can answer today.\n`);
}
