/**
 * Of days on which different things happen one is refused, chosen, added or meant by its town: "the heats needn't be filmed", "we looked at the 5th and the 12th and chose
 * the 12th", "the 13th has been added", "on the 12th in Fargo and on the 19th in Minot; we need you in Minot", "it ends with a show that we want filmed".
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, inMonthOf, MOST_MENTIONS, namedAmong, OF_ELSE, union } from './days-among.ts';
import { isToldOf } from './part-of-run.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const FILMED = String.raw`(?:film|record|cover|captur|stream|video|shoot)(?:e?d|ing)?`;
const THING = String.raw`((?!(?:whole|event|film|video|camera|rest|day|days|weekend|thing|others?|night|evening|raw|edit|drone|full|price|money|logo|sound)\b)\p{L}{4,20})`;
const REFUSED = new RegExp(
  [
    String.raw`\bthe ${THING} (?:needn['’]?t|need not|(?:do|does)(?:n['’]t| not) (?:need to|have to)|(?:is|are)(?:n['’]t| not) to|won['’]t|should not|shouldn['’]t) be ${FILMED}\b`,
    String.raw`\bthe ${THING} (?:(?:do|does)(?:n['’]t| not) need|(?:is|are) not for|(?:is|are)n['’]t for|needs? no) (?:${FILMED}|a camera|cameras?|film|video)\b`,
    String.raw`\b(?:no need (?:for|to (?:film|record|cover))|(?:no (?:video|filming|cameras?)) (?:at|of|for)|(?:don['’]t|do not|won['’]t|needn['’]t) (?:need|want|film|cover|record|bother with)(?: to (?:film|record|cover))?) the ${THING}(?=\s?[.,;!?)\n]|$| at all| filmed| recorded| covered)`,
  ].join('|'),
  'iu',
);
const CHOSE =
  /(?<!n['’]t |\bnot |\bnever |\bto )\b(?:we(?:'ve| have)?|they(?:'ve| have)?|i(?:'ve| have)?|and|then|finally|but|so) (?:now |finally |then |in the end |all )?(?:chose|chosen|picked|settled (?:on|for)|went (?:with|for)|gone (?:with|for)|decided (?:on|for)|agreed on|opted for|plumped for|landed on) (?:on )?(?:the )?$/i;
const ADDED_BEFORE =
  /\b(?:we|they|i|who)(?:'ve| have)? (?:now |since |just |also )?(?:added|tacked on|extended it (?:to|by))(?: on)? (?:the )?$/i;
const ADDED_BEHIND = /^,?\s(?:has|have|was|is|'s|were) (?:now |since |just |also )?(?:been )?(?:being )?(?:added|tacked on)\b/i;
const IN_TOWN = /\b(?:need|want|like|book|have) you (?:only |just )?(?:in|at|for) (\p{Lu}[\p{L}-]{2,20})\b(?! (?:and|&|or|on|from|to)\b)/u;
const ENDS_WITH =
  /\b(end|close|finish|conclude|start|begin|open)(?:s|es|ing)? with (?:a|an|the|our) (?:[\p{L}-]+ ){1,4}?(?:(?:that|which) (?:we|i|they)(?:'d| would)? (?:like|want|need|wish|love)|(?:which|that) (?:is|should|needs?|has)(?: to)?(?: be)? (?:what|film|record|cover))/iu;

/** The days, or those that are left by what is said of one thing beside all of them as a question. */
export function heldAgainstOneThing({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const { dates, where } = event;
  const [first, last] = [dates[0], dates.at(-1)];
  if (first === undefined || last === undefined || event.dropped || event.counted) return event;
  const ahead = mentions.slice(0, MOST_MENTIONS).filter(({ by, said }) => !by && !OF_ELSE.has(said));
  const asked = (...days: readonly (readonly string[])[]): EventDays =>
    askedDays(
      where,
      days.map((one) => [...one]),
      'open',
    );
  const isPart = (days: readonly string[]): boolean => days.length > 0 && days.length < dates.length;
  for (const mention of ahead) {
    const lead = text.slice(Math.max(0, mention.start - LEAD), mention.start);
    const named = namedAmong(mention, dates);
    if (CHOSE.test(lead) && isPart(named)) return asked(named, dates);
    if (ADDED_BEFORE.test(lead) || ADDED_BEHIND.test(text.slice(mention.end, mention.end + LEAD))) {
      const day = named[0] ?? mention.readings[0]?.[0] ?? inMonthOf(first, mention.sequence.items[0]?.atom.day ?? 0);
      const others = otherDays(mentions, mention, dates);
      if (day !== undefined && others.length > 0 && !others.every((one) => dates.includes(one) && one !== day && dates.includes(day)))
        return asked(union(others, [day]), dates);
    }
  }
  if (dates.length < 2) return event;
  const refused = REFUSED.exec(text);
  const noun = refused?.slice(1).find((word) => word !== undefined);
  if (refused && noun !== undefined) {
    const at = { from: refused.index, to: refused.index + refused[0].length };
    const theirs = union(...ahead.filter((one) => isToldOf(text, one, noun.toLowerCase(), at)).map((one) => namedAmong(one, dates)));
    if (isPart(theirs))
      return asked(
        dates.filter((day) => !theirs.includes(day)),
        dates,
      );
    // "The heats are on the 12th and the final on the 13th": both days are told in one breath.
    if (where.some((one) => isToldOf(text, { start: one.start, end: one.start }, noun.toLowerCase(), at)))
      return asked(...dates.map((day) => [day]));
  }
  const town = IN_TOWN.exec(text);
  if (town?.[1] !== undefined) {
    const [near, others] = [nearTown(text, ahead, town[1], dates), ahead.length];
    if (others > 1 && isPart(near)) return asked(near, dates);
  }
  const end = ENDS_WITH.exec(text)?.[1];
  return end === undefined ? event : asked([/^[ecf]/i.test(end) ? last : first], dates);
}
const LEAD = 60;

/** Days with month and number that are named beside a mention, also those that hold no more. */
const otherDays = (mentions: readonly DateMention[], { start }: DateMention, known: readonly string[]): string[] =>
  union(
    ...mentions
      .filter((one) => one.start !== start && one.explicit && one.readings.length === 1 && one.said !== 'reply' && one.said !== 'delivery')
      .map(({ readings: [days = []] }) => days),
  ).filter((day) => known.length > 0 && Math.abs(Temporal.PlainDate.from(known[0] as string).until(day).days) <= NEAR);
const NEAR = 7;

/** The days behind which a town is named in their clause. */
const nearTown = (text: string, mentions: readonly DateMention[], town: string, dates: readonly string[]): string[] =>
  union(
    ...mentions
      .filter((mention, at) => {
        const to = Math.min(sentenceAround(text, mention.start, mention.end).end, mentions[at + 1]?.start ?? text.length);
        return new RegExp(String.raw`^[^.;!?\n]{0,20}\b(?:in|at) ${town}(?!\p{L})`, 'u').test(text.slice(mention.end, to));
      })
      .map((mention) => namedAmong(mention, dates)),
  );
