/**
 * What stands in a message before anything is decided: its own part, its words, and the dates, times, amounts and phone numbers in it.
 */
import type { Place } from '../contract/parts.ts';
import type { Gazetteer } from '../places/gazetteer.ts';
import { placesNamed } from '../places/search.ts';
import { aroundFeasts } from './dates/around-feasts.ts';
import { inSeries } from './dates/in-series.ts';
import { orderOf, orderSeen, writesDayFirst } from './dates/order.ts';
import { inNamedWeeks } from './dates/in-weeks.ts';
import { monthQuoted } from './dates/month-quoted.ts';
import { namedAgain } from './dates/named-again.ts';
import type { Resolved } from './dates/from-today.ts';
import { resolve } from './dates/resolve.ts';
import { sequencesOf, type Sequence } from './dates/sequences.ts';
import { closesAt, monthAhead, monthBefore, monthBeside, monthOfEarlier, monthOfWeek, strayMonth } from './dates/stray-month.ts';
import type { Learned } from './learned/models.ts';
import { countriesPaying, currenciesFor, currencyOf } from './money/currency.ts';
import { amountsIn } from './money/find.ts';
import type { Amount } from './money/units.ts';
import { clean, type Clean } from './parts/clean.ts';
import { withoutOldMail } from './parts/old-mail.ts';
import type { Part } from './parts/lines.ts';
import { only, split } from './parts/split.ts';
import { datesApart, takenBy } from './parts/stretches.ts';
import { tokensOf, type Token } from './parts/tokens.ts';
import { datesWritten } from './parts/written.ts';
import { phonesIn } from './people/reach.ts';
import { countryOfZone } from './places/countries.ts';
import { sayDates } from './settle/said-dates.ts';
import { sayTimes } from './settle/said-times.ts';
import type { Scene, Where } from './settle/scene.ts';
import { timesOf } from './times/find.ts';

export type ReadInput = {
  /** The message as it came, at most 200,000 characters. */
  text: string;
  /** `2026-11-25T09:12:00-06:00[America/Chicago]` */
  receivedAt: string;
  /** IANA zone in which I live; reply-by is in it. */
  homeZone: string;
  homePlace?: Place | undefined;
  /** ISO 4217; the currency of the home zone's country when not given. */
  homeCurrency?: string | undefined;
  gazetteer: Gazetteer;
  /** What labelled messages taught. */
  learned: Learned;
};

export type Sight = {
  plain: Clean;
  parts: readonly Part[];
  /** What the sender wrote, without quotes and signature. */
  body: string;
  /** What mail programs and machines wrote above and below it. */
  head: string;
  /** All of it but old mails that are quoted. */
  whole: string;
  tokens: readonly Token[];
  scene: Scene;
  homeCountry: string | undefined;
  homeCurrency: string | undefined;
  phones: readonly Where[];
  /** True for a token that belongs to a date, a price or a phone number. */
  takenToken: (index: number) => boolean;
};

const inDollars = (amounts: readonly Amount[]): boolean =>
  amounts.some(({ mark }) => mark !== undefined && currenciesFor(mark, undefined)[0] === 'USD');

/** Nobody tells a job further down than this, in characters. */
const FARTHEST = 12_000;
/** Dates and hours after this many are those of a programme: nobody tells a job by them. */
const MOST_SAID = 100;

/** Look at a message; `input` as for reading it. */
export function lookAt(input: Omit<ReadInput, 'learned'>): Sight {
  const received = Temporal.ZonedDateTime.from(input.receivedAt, { offset: 'use' }).withTimeZone(input.homeZone);
  const plain = clean(input.text);
  const parts = split(plain.text);
  const body = only(plain.text, parts, 'own', 'forwarded', 'subject').slice(0, FARTHEST);
  const tokens = tokensOf(body);
  const homeCountry = input.homePlace?.country ?? countryOfZone(input.homeZone);
  const homeCurrency = input.homeCurrency ?? currencyOf(homeCountry);

  const amounts = amountsIn(body);
  const custom = orderOf(homeCountry, ...countriesPaying(amounts), ...(inDollars(amounts) ? ['US'] : []));
  const order = orderSeen(tokens) ?? (custom === 'month first' && writesDayFirst(tokens) ? 'either' : custom);
  const today = received.toPlainDate();
  const written = datesWritten(plain.text, parts, today, order);
  const found = sequencesOf(tokens);
  const months = new Set(
    found.flatMap(({ month }) => (month && (month.year === undefined || month.year >= today.year) ? [month.month] : [])),
  );
  const month = months.size === 1 ? [...months][0] : undefined;
  const stray = strayMonth(tokens, found);
  const quoted = monthQuoted(plain.text, parts, found, today);
  const resolveFrom = (sequence: Sequence, from: Temporal.PlainDate): Resolved => resolve(sequence, { today: from, order });
  const dated = aroundFeasts(
    tokens,
    found.map((sequence) => {
      const start = tokens[sequence.first]?.start ?? 0;
      const end = tokens[sequence.next - 1]?.end ?? 0;
      const near =
        monthBeside(body, tokens, sequence, found, today) ??
        monthOfEarlier(body, tokens, sequence, found) ??
        monthOfWeek(body, tokens, sequence, found) ??
        monthAhead(body, tokens, sequence, today) ??
        monthBefore(body, tokens, sequence) ??
        month ??
        (closesAt(body, start) ? undefined : quoted);
      const seen = { today: written.findLast((mail) => mail.from <= start)?.date ?? today, order, month: near, stray };
      return { sequence, resolved: resolve(sequence, seen), start, end };
    }),
    resolveFrom,
  );
  const sequences = inNamedWeeks(body, tokens, namedAgain(body, dated), today, resolveFrom);
  const phones = phonesIn(body, true);
  const dates = sayDates(
    body,
    inSeries(body, sequences.slice(0, MOST_SAID), (sequence, longest) => resolve(sequence, { today, order, longest })),
  );
  const priced = amounts.filter(
    (amount) => amount.mark !== undefined || (amount.per !== undefined && amount.per !== 'other' && amount.amount >= 50),
  );
  // A time between two dates of a run stays one: "24 Sept 14:00 to 25 Sept 14:00".
  const taken = takenBy([...sequences.flatMap((found) => datesApart(tokens, found)), ...priced, ...phones]);
  const takenToken = (index: number): boolean => tokens[index] !== undefined && taken(tokens[index].start);
  const { times, numbers } = sayTimes(
    body,
    timesOf(tokens, takenToken, (town) => placesNamed(input.gazetteer, town)[0]?.zone).slice(0, MOST_SAID),
    dates,
  );
  const scene: Scene = { text: body, tokens, received, dates, times, numbers, amounts };
  const now = withoutOldMail(plain.text, parts);
  const head = only(plain.text, now, 'header', 'subject', 'footer');
  const whole = only(plain.text, now, 'own', 'forwarded', 'signature', 'header', 'subject', 'footer', 'stamp');
  return { plain, parts, body, head, whole, tokens, scene, homeCountry, homeCurrency, phones, takenToken };
}
