/**
 * The time by which an answer is wanted held against what the learned weights make of its day and its hour: where one of them is hardly said of an answer, it is asked.
 */
import type { DateMention, ReplyBy, SaidTime, Where } from '../settle/scene.ts';
import { dateFeatures, isBrief, timeFeatures, type Page } from './features.ts';
import { chancesIn, type Learned } from './models.ts';

/** Below this a day or an hour is hardly said of an answer. */
const HARDLY = 0.005;
/** From here on an hour that rules do not take for it is likely that of the answer. */
const LIKELY = 0.6;
const DAY_ALONE = 'T23:59';

/** The answer as rules settled it, or asked about where the weights plainly speak against it. */
export function agreedReply(reply: ReplyBy, page: Page, learned: Learned): ReplyBy {
  const { dates, times } = page.scene;
  if (reply.wall === undefined) return reply;
  const ofDate = (date: DateMention): number => chancesIn(learned.date, dateFeatures(page, date))['reply'] ?? 0;
  const ofTime = (time: SaidTime): number => chancesIn(learned.time, timeFeatures(page, time))['reply'] ?? 0;
  const isIts = ({ start }: Where): boolean => reply.where.some((one) => one.start === start);
  const doubted = dates.some((date) => isIts(date) && ofDate(date) < HARDLY) || times.some((time) => isIts(time) && ofTime(time) < HARDLY);
  // "by Friday ... I need it before noon": a day alone, and an hour beside it.
  const hourLeft = reply.wall.endsWith(DAY_ALONE) && !isBrief(page) && times.some((time) => !isIts(time) && ofTime(time) > LIKELY);
  return doubted || hourLeft ? { where: reply.where, choices: [reply.wall] } : reply;
}
