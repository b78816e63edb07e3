/**
 * The time by which an answer is wanted held against what the learned weights make of its day and its hour: where one of them is hardly said of an answer, it is asked.
 */
import type { ReplyBy } from '../settle/scene.ts';
import { dateFeatures, timeFeatures, type Page } from './features.ts';
import { chancesIn, type Learned } from './models.ts';

/** Below this a day or an hour is hardly said of an answer. */
const HARDLY = 0.005;

/** The answer as rules settled it, or asked about where the weights plainly speak against it. */
export function agreedReply(reply: ReplyBy, page: Page, learned: Learned): ReplyBy {
  const { dates, times } = page.scene;
  if (reply.wall === undefined) return reply;
  const doubted = reply.where.some(({ start }) => {
    const date = dates.find((one) => one.start === start);
    const time = times.find((one) => one.start === start);
    const chances = date
      ? chancesIn(learned.date, dateFeatures(page, date))
      : time
        ? chancesIn(learned.time, timeFeatures(page, time))
        : undefined;
    return chances !== undefined && (chances['reply'] ?? 0) < HARDLY;
  });
  return doubted ? { where: reply.where, choices: [reply.wall] } : reply;
}
