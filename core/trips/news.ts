/**
 * What became of a ticket after it was bought: the leg as it was ticketed, and the news in words.
 */
import type { Leg, LegFields, LegNews } from '../contract/trips.ts';
import { wallInWords } from '../words/dates.ts';

/** The leg with the times of its ticket, whatever was told since. */
export function asTicketed({ id: _id, jobId: _jobId, version: _version, news, ...fields }: Leg): LegFields {
  return { ...fields, ...news?.was };
}

/** "The flight Duluth to Chicago is cancelled", "… now leaves on Mon 14 December 2026, 09:05 instead of 06:15". */
export function newsInWords({ mode, from, to, note, depart, arrive }: LegFields, news: Pick<LegNews, 'kind' | 'was'>): string {
  const leg = `The ${mode}${note === '' ? '' : ` ${note}`} ${from.name} to ${to.name}`;
  if (news.kind === 'cancelled') return `${leg} is cancelled`;
  const { was } = news;
  const instead = (now: string, before: string): string =>
    now === before
      ? `as ticketed, ${wallInWords(now)}`
      : `${wallInWords(now)} instead of ${now.slice(0, 10) === before.slice(0, 10) ? before.slice(11) : wallInWords(before)}`;
  if (depart === was.depart) return `${leg} now arrives on ${instead(arrive, was.arrive)}`;
  return `${leg} now leaves on ${instead(depart, was.depart)}`;
}
