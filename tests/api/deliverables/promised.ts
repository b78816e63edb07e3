/**
 * A job in ink with one edit promised, that the tests of rounds and of time spent begin with.
 */
import { newId } from '../../../db/ids.ts';
import { deliverables, stages, templates } from '../../../db/schema/deliverables.ts';
import { agreedJob, type Agreed } from '../invoices/agreed-job.ts';

type Kind = (typeof stages.$inferInsert)['kind'];
export type Promised = Agreed & { edit: string; template: string; stage: (kind: Kind, nth?: number) => string };
type More = Parameters<typeof agreedJob>[0] & { edit?: Partial<typeof deliverables.$inferInsert>; template?: string };

const KINDS: Kind[] = ['ingest', 'selects', 'rough cut', 'round', 'fine cut', 'round', 'picture lock', 'delivered', 'approved'];
const HALF_HOURS = [2, 8, 12, 4, 4, 4, 2, 0, 0];
const format = { width: 1920, height: 1080, rate: '29.97 drop', codec: 'ProRes 422', loudness: '', captions: '', other: '' };
const NUMBERS = {
  finishedMinutes: '4',
  editHours: '13',
  editHoursPerMinute: '3.25',
  ingestHours: '1',
  rounds: 2,
  hoursPerRound: '2',
  windowDays: 3,
  internalDays: 1,
  format,
  sameDay: false,
};

/** Highlights of four minutes, due on Wed 6 January 2027, two rounds of two hours included, three business days for notes. */
export async function promised({ edit = {}, template, ...more }: More = {}): Promise<Promised> {
  const agreed = await agreedJob(more);
  const { store, now } = agreed.at.context;
  const at = { createdAt: now(), updatedAt: now() };
  const ids = KINDS.map(() => newId());
  const id = newId();
  const templateId = template ?? newId();
  store.write((db) => {
    if (template === undefined) {
      const due = { days: 15, count: 'business', from: 'last wrap' } as const;
      db.insert(templates)
        .values({ ...NUMBERS, id: templateId, name: 'Highlights', due, ...at })
        .run();
    }
    const dates = { dueDate: '2027-01-06', agreedDueDate: '2027-01-06', internalDate: '2027-01-05' };
    db.insert(deliverables)
      .values({ ...NUMBERS, ...dates, id, jobId: agreed.job.id, templateId, position: 1, name: 'Highlights', ...at, ...edit })
      .run();
    KINDS.forEach((kind, order) => {
      const halfHours = HALF_HOURS[order] ?? 0;
      db.insert(stages)
        .values({ id: ids[order] ?? newId(), deliverableId: id, position: order + 1, kind, halfHours })
        .run();
    });
  });
  const stage = (kind: Kind, nth = 1): string => {
    const found = ids.filter((_, order) => KINDS[order] === kind)[nth - 1];
    if (found === undefined) throw new Error(`no ${kind}`);
    return found;
  };
  return { ...agreed, edit: id, template: templateId, stage };
}
