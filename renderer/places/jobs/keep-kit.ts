/**
 * Kit that was tried on, written down: another unit among the needs, or a sub-hire as a cost with so many fewer of my own asked for.
 */
import type { Job } from '../../../core/contract/jobs.ts';
import type { KitNeed } from '../../../core/contract/kit.ts';
import type { TryOn } from '../../../core/contract/try-on.ts';
import { withFewer, withInstead } from '../../../core/fit/kit-list.ts';
import { subHireCost } from '../../../core/fit/sub-hire.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';

export async function keepOtherUnit(jobId: string, instead: NonNullable<TryOn['kitInstead']>): Promise<boolean> {
  const before = await deed(async () => {
    const needs = await needsOf(jobId);
    await setNeeds(
      jobId,
      withInstead(needs, instead).filter(({ count }) => count > 0),
    );
    return needs;
  });
  if (!before) return false;
  say('The other unit is on the job’s kit.', { label: 'Take it back', perform: () => deed(() => setNeeds(jobId, before)) });
  return true;
}

/** The cost comes first: where the kit cannot be changed after it, the line stands on the quote and can be taken back there. */
export async function keepSubHire(job: Job, extra: NonNullable<TryOn['kitExtra']>): Promise<boolean> {
  const before = await deed(async () => {
    const { items } = await client.kit.list({});
    const needs = await needsOf(job.id);
    const { draft } = await client.quotes.draft({ jobId: job.id });
    const changes = extra.map(({ item, count }) => {
      const known = items.find(({ id }) => id === item);
      const cost = known ? subHireCost(known.subHire, count, job.days) : null;
      const what = `Sub-hire: ${countInWords(count, known?.name ?? item, known?.name ?? item)}`;
      return { op: 'add' as const, section: 'kit' as const, what, quantity: '1', unit: 'job', unitPrice: '0', ...(cost ? { cost } : {}) };
    });
    await client.quotes.change({ jobId: job.id, draftVersion: draft.draftVersion, changes });
    await setNeeds(job.id, withFewer(needs, extra));
    return { needs, costed: changes.every((change) => 'cost' in change) };
  });
  if (!before) return false;
  const cost = before.costed
    ? 'The sub-hire is a line of the quote, with its cost.'
    : 'The sub-hire is a line of the quote; put in what it costs you.';
  say(`${cost} So many fewer of your own are held.`, {
    label: 'Take it back',
    perform: () =>
      deed(async () => {
        const { draft } = await client.quotes.draft({ jobId: job.id });
        await client.quotes.undo({ jobId: job.id, draftVersion: draft.draftVersion });
        await setNeeds(job.id, before.needs);
      }),
  });
  return true;
}

const needsOf = async (jobId: string): Promise<KitNeed[]> =>
  (await client.kit.forJob({ jobId })).needs.map(({ item, count }) => ({ item, count }));

const setNeeds = (jobId: string, needs: KitNeed[]): Promise<unknown> => client.kit.setForJob({ jobId, needs, key: crypto.randomUUID() });
