/**
 * The days of the event: the dates that no cue gives to anything else. Two that cannot both be meant are a question.
 */
import { anyOf } from '../phrases.ts';
import { leftOpen } from './alternatives.ts';
import { allAside, wasThen, withoutAsides } from './aside.ts';
import { boundsIt, ofSomethingElse, withoutOwners } from './elsewhere.ts';
import { markedOf } from './marked.ts';
import { countedOff } from './counted-off.ts';
import { isEvent, pointedAt } from './pointed.ts';
import { plannedIn } from './day-rows.ts';
import { withoutEves } from './eves.ts';
import { isOff } from './off-days.ts';
import { daysSaid } from './days.ts';
import { rivalOf } from './rival.ts';
import { stillAhead } from './still-ahead.ts';
import { askedDays, consecutive, inMonthOf, MOST_MENTIONS, union, within } from './days-among.ts';
import { allCounted, joinedUp, wantedTogether } from './joined-up.ts';
import { onlySome } from './form-days.ts';
import { dayOfCall, ENDS, endsIt, firstToLast, lengthened, LONGEST_STATED, runFrom, wholeRun } from './run.ts';
import { withoutTheirs } from './theirs-before.ts';
import { toldParts } from './told-parts.ts';
import { allBut, inTheirPlace, wantedOf } from './wanted.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';
import { weekdaysAgainst, withoutTheirOwn } from './weekdays-against.ts';

/** Decide on the days; nothing where only a month, a week or nothing is said. */
export function eventDays(scene: Scene): EventDays {
  const today = scene.received.toPlainDate().toString();
  const spoken = stillAhead(scene);
  const all = withoutTheirs(
    scene.text,
    scene.dates
      .slice(0, MOST_MENTIONS)
      .filter(
        (mention) =>
          (isEvent(mention) || mention === spoken) &&
          !mention.past &&
          (mention.readings.length > 0 || mention.doubt !== undefined) &&
          !mention.by &&
          !boundsIt(scene.text, mention),
      ),
  );
  // "Provincials are Nov 20, 21 and 22 ... all three days"
  const counts = new Set(daysSaid(scene.text).map(({ days }) => days));
  const counted = ({ readings: [days = [], ...more] }: DateMention): boolean =>
    more.length === 0 && days.length > 1 && counts.has(days.length);
  const together = allCounted(
    scene.text,
    all.filter(({ explicit, weak }) => explicit && !weak),
  );
  const loose = together
    ? []
    : withoutOwners(
        all.filter((mention) => mention.said !== 'event' && !counted(mention) && ofSomethingElse(scene.text, mention)),
        all,
      );
  const roughly = scene.dates.some(
    (mention) => mention.vague && mention.explicit && isEvent(mention) && !mention.past && !wasThen(scene.text, mention),
  );
  if (loose.length === all.length && loose.length > 0 && roughly)
    return askedDays(
      loose,
      loose.flatMap(({ readings }) => readings),
    );
  const firm = all.filter((mention) => !mention.weak && !loose.includes(mention));
  // Dates with words of a delivery or of nothing of the work alone are asked about.
  if (firm.length === 0 && loose.length < all.length && all.every(({ weak, explicit }) => weak && !explicit))
    return askedDays(
      all,
      all.flatMap(({ readings }) => readings),
    );
  const candidates = together ? firm : withoutEves(scene.text, withoutAsides(scene, firm.length > 0 ? firm : all));
  const isToday = (mention: DateMention): boolean =>
    mention.readings.length === 1 && mention.readings[0]?.length === 1 && mention.readings[0][0] === today;
  // The date of the letter itself is no day of the job where another is told.
  const dated = candidates.filter((mention) => mention.explicit);
  const ofLetter = (mention: DateMention): boolean => mention.said === undefined && isToday(mention);
  const numbered = candidates.filter((mention) => !mention.explicit && mention.sequence.items.some(({ atom }) => atom.day !== undefined));
  const explicit = [...dated, ...numbered].some((mention) => !ofLetter(mention)) ? dated.filter((mention) => !ofLetter(mention)) : dated;
  const relative = candidates.filter((mention) => !mention.explicit && !numbered.includes(mention) && !mention.weekdayOnly);
  const weekdays = withoutTheirOwn(candidates.filter((mention) => mention.weekdayOnly));
  const later = relative.filter((mention) => !isToday(mention));
  const tiers = [explicit, numbered, later, weekdays, relative.filter(isToday)].filter((tier) => tier.length > 0);
  const main = tiers[0];
  if (!main) return lengthened(scene, dayOfCall(scene));
  // "sometime in March, a Saturday": a weekday alone is not the date where a month is named without one.
  const bare = ({ sequence: { items } }: DateMention): boolean => items.every(({ atom }) => atom.relative === undefined);
  if (
    main === weekdays &&
    weekdays.some(bare) &&
    scene.dates.some((mention) => mention.vague && mention.explicit && isEvent(mention) && !mention.past)
  )
    return askedDays(
      [],
      weekdays.flatMap(({ readings }) => readings),
    );
  const aside = (main === explicit || main === numbered) && !allAside(scene, main) ? [] : setAside(scene, loose, today);
  if (aside.length > 0 && !main.some(({ said }) => said === 'event'))
    return askedDays(
      [...aside, ...main],
      [...aside, ...main].flatMap(({ readings }) => readings),
    );
  if (roughly && allAside(scene, main))
    return askedDays(
      [...main],
      main.flatMap(({ readings }) => readings),
    );
  const near = main === explicit ? rivalOf(main, later) : undefined;
  if (near) return near;
  const clash = weekdaysAgainst(main, weekdays);
  if (clash) return clash;
  const plain = continued(scene, settleTier(scene, main, today), main === explicit ? numbered : []);
  const settled =
    allBut(scene, plain) ??
    toldParts(scene, plain) ??
    inTheirPlace(scene, plain) ??
    markedOf(scene, plain, candidates) ??
    narrowedOf(scene, plain, candidates) ??
    leftOpen(scene, plain, main, candidates) ??
    (plain.doubt === 'several' && allCounted(scene.text, main)
      ? { dates: union(...plain.choices), where: plain.where, choices: [] }
      : plain);
  const planned = plannedIn(scene, settled);
  if (planned) return planned;
  if (settled.dates.length === 0 || settled.dropped) return settled;
  const run = wholeRun(scene, lengthened(scene, settled));
  const whole = toldParts(scene, run) ?? run;
  const eachCounted = whole.dates.length >= main.length && allCounted(scene.text, main);
  return whole.dates.length > 1 && (eachCounted || wantedTogether(scene.text, whole.where)) ? { ...whole, counted: true } : whole;
}

/** The days that are pointed at, where fewer or others are than those that were settled. */
function narrowedOf(scene: Scene, plain: EventDays, candidates: readonly DateMention[]): EventDays | undefined {
  const wanted = pointedAt(scene, candidates, wantedOf(scene, plain));
  return wanted === plain ? undefined : wanted;
}

/** Dates to come with day and month that were taken for something else: where no other is left than a weekday or "in a week", one of them may be the day. */
const setAside = (scene: Scene, loose: readonly DateMention[], today: string): DateMention[] =>
  scene.dates.filter(
    (mention) =>
      mention.explicit &&
      !mention.by &&
      mention.readings.length === 1 &&
      (mention.readings[0]?.[0] ?? '') > today &&
      (mention.said === 'other' || mention.said === 'past' || mention.said === 'delivery' || loose.includes(mention)),
  );

const GOES_ON = anyOf(`{goes} ... | {goes} ... on ... | {also}`, {
  goes: `continue | continues | continuing | carries on | carry on | goes on | going on | runs on | spills over | spills into | followed by | concludes | concluding | ends | finishes | closes | day two | second day | the second | round two`,
  also: `following day | next day | day after | following evening | next evening | following morning | and | and on | and also | and also on | and then | and then on | and then again | then again | and once_more | and again | and again on | plus | plus on | then on | and the`,
});

/** What parts a day from the one named before it in a breath. */
const OPEN_OR_OVER =
  /[.;!?\n]|\b(?:or|not|rather|if|by|until|till|but|instead|in place of|whereas|while|non|nicht|statt|pas|niet|plut[oô]t)\b/i;
/** So near before a day stands what says that it is another one. */
const NEAR = 24;
const GOES_ON_TO = new RegExp(`${GOES_ON.source},?\\s?(?:on\\s)?(?:the\\s)?$`, 'i');

/** "5, 6, 7 and then again the 11th" */
const AGAIN =
  /(?<!\b(?:out|back|home|away|off|over|up|in|leaves?|flies|flying)\s)\b(?:again|once more|plus|and also|as well as|(?:plus|and|with) (?:an?|one more|another) (?:[\p{L}-]+ ){0,2}(?:day|evening|session|afternoon|morning|repeat|performance|round))(?: on)?(?: the)?\s$/iu;

/** "Saturday 12 December ... It goes on on Sunday the 13th": a day told by its number alone joins the run where words say so. */
function continued(scene: Scene, settled: EventDays, numbered: readonly DateMention[]): EventDays {
  const [first, last] = [settled.dates[0], settled.dates.at(-1)];
  if (first === undefined || last === undefined) return settled;
  const counts = new Set(daysSaid(scene.text).map(({ days }) => days));
  const numbers = new Set(settled.dates.map((date) => Number(date.slice(8))));
  // "The semi is on Saturday 12 August and the final is the 26th ... $550 a day, both days"
  const both = settled.dates.length === 1 && numbered.length === 1 && (BOTH.test(scene.text) || FILM_BOTH.test(scene.text));
  const more = numbered.flatMap((mention) => {
    const { readings, doubt, sequence, start, end } = mention;
    const { items } = sequence;
    if (endsIt(scene, mention, settled) || isOff(scene.text, mention)) return [];
    if (readings.length !== 1 || doubt || items.some(({ atom }) => atom.day === undefined || numbers.has(atom.day))) return [];
    const told = readings[0] ?? [];
    // "20 and 21 March ... on the 19th": a day without a month is one of theirs, if that makes days in a row.
    const near = told.length === 1 ? inMonthOf(first, items[0]?.atom.day ?? 0) : undefined;
    const lead = scene.text.slice(Math.max(0, start - 60), start);
    const goesOn = GOES_ON_TO.test(lead) || AGAIN.test(lead) || (both && !OPEN_OR_OVER.test(lead.slice(-NEAR)));
    const ofRun = near !== undefined && (consecutive(union(settled.dates, [near])) || (goesOn && near > last));
    const days = ofRun ? [near] : told;
    const all = union(settled.dates, days);
    const sameBreath =
      items.every(({ atom }) => atom.weekday !== undefined) &&
      settled.where.some((where) =>
        where.end <= start
          ? (days[0] ?? '') > first && !OPEN_OR_OVER.test(scene.text.slice(where.end, start))
          : consecutive(all) && !OPEN_OR_OVER.test(scene.text.slice(end, where.start)),
      );
    const again = ofRun && (AGAIN.test(lead) || both);
    return goesOn || sameBreath || (counts.has(all.length) && consecutive(all)) ? [{ days, again, where: { start, end } }] : [];
  });
  if (more.length === 0) return functionsBeside(scene, settled, numbered) ?? settled;
  const all = union(settled.dates, ...more.map(({ days }) => days));
  const where = [...settled.where, ...more.map((one) => one.where)];
  const sure = consecutive(all) || more.every(({ again }) => again);
  // "5, 6, 7 and then again the 11th": each is asked for in so many words.
  const asked = settled.dates.length > 1 && more.every(({ again }) => again) ? { counted: true as const } : {};
  return sure && all.length <= LONGEST_STATED ? { dates: all, where, choices: [], ...asked } : askedDays(where, [settled.dates, all]);
}

/** "the wedding is on 27 November, the mehndi on the 25th and the sangeet on the 26th": functions of other days of the same run, taken where they are counted and else asked about. */
function functionsBeside({ text }: Scene, settled: EventDays, numbered: readonly DateMention[]): EventDays | undefined {
  const [day] = settled.dates;
  if (day === undefined || settled.dates.length > 1) return undefined;
  const others = numbered.flatMap(({ start, end, sequence: { items } }) => {
    const near = items.length === 1 ? inMonthOf(day, items[0]?.atom.day ?? 0) : undefined;
    const told = near !== undefined && near !== day && A_FUNCTION.test(text.slice(Math.max(0, start - 60), start));
    return told ? [{ near, where: { start, end } }] : [];
  });
  const all = union(
    settled.dates,
    others.map(({ near }) => near),
  );
  if (others.length === 0 || !consecutive(all)) return undefined;
  const where = [...settled.where, ...others.map((one) => one.where)];
  return daysSaid(text).some(({ days }) => days === all.length)
    ? { dates: all, where, choices: [], counted: true }
    : askedDays(where, [settled.dates, all]);
}
const A_FUNCTION =
  /(?:^|[,;.]|\b(?:and|with|plus|then))\s(?:there's |there is |we have )?(?:an?|the|our|his|her|their) (?!(?:hotel|train|flight|deposit|balance|bill|invoice|payment|hall|venue|van|kit|gear|rest)\b)(?:[\p{L}'-]+ ){1,4}(?:is |are |will be )?on (?:the )?$|(?:^|[,;]|\b(?:and|with|plus|then))\s\p{L}{4,} (?:is |are |will be )?on (?:the )?$/iu;

/** "Can you film both?", "900 for both" */
const FILM_BOTH =
  /\b(?:film|cover|record|shoot|do|capture|stream)(?:ing)?\s(?:them\s)?both\b(?! (?:cameras|sides|teams|families|angles|sets|halves))|\bfor (?:them )?both(?: together)?(?=\s?[.,;!?)\n]|$)|\bboth\s(?:be )?(?:filmed|covered|recorded|captured)\b/i;
const BOTH = /\bboth (?:days|dates|nights|evenings|of (?:them|those))\b/i;

function settleTier(scene: Scene, tier: readonly DateMention[], today: string): EventDays {
  if (tier.some((mention) => mention.doubt !== 'passed') && tier.some((mention) => mention.doubt === 'passed'))
    return settleTier(
      scene,
      tier.filter((mention) => mention.doubt !== 'passed'),
      today,
    );
  const where = tier.map(({ start, end }) => ({ start, end }));
  const doubtful = tier.find((mention) => mention.readings.length !== 1 || mention.doubt !== undefined);
  const sure = tier.filter(
    (mention) => mention.readings.length === 1 && mention.doubt === undefined && (mention.readings[0]?.at(-1) ?? '') >= today,
  );
  if (doubtful) {
    // A doubtful mention is settled by a sure one that it may repeat.
    const rest = tier.filter((mention) => !sure.includes(mention));
    const settledBySure =
      sure.length > 0 &&
      rest.every((mention) =>
        mention.readings.some((reading) =>
          sure.some((other) => within(reading, other.readings[0] ?? []) || within(other.readings[0] ?? [], reading)),
        ),
      );
    if (!settledBySure) {
      const choices = [
        ...new Map(
          [...doubtful.readings, ...sure.map((mention) => mention.readings[0] ?? [])].map((reading) => [reading.join(), reading]),
        ).values(),
      ];
      return {
        dates: [],
        where: [doubtful],
        choices: choices.filter((reading) => (reading.at(-1) ?? '') >= today),
        doubt: doubtful.doubt ?? 'choice',
      };
    }
  }
  const sets = [...new Map(sure.map((mention) => [(mention.readings[0] ?? []).join(), mention])).values()];
  if (sets.length === 0) return { dates: [], where: [], choices: [] };
  const [one, two] = sets;
  const toLast = one !== undefined && two !== undefined && sets.length === 2 && firstToLast(one, two);
  const ends = two && sets.length === 2 && (ENDS.test(two.before) || toLast) ? two.readings[0]?.at(-1) : undefined;
  const starts = one?.readings[0]?.[0];
  // "sail on the 9th and return on the 11th"
  if (ends !== undefined && starts !== undefined && ends > starts) {
    const length = Temporal.PlainDate.from(starts).until(Temporal.PlainDate.from(ends)).days + 1;
    if (toLast && (length > LONGEST_STATED || onlySome(scene.text))) return askedDays(where, [[starts], [ends]], 'open');
    if (length <= LONGEST_STATED) return { dates: runFrom(starts, length), where, choices: [], ...(toLast ? { counted: true } : {}) };
  }
  const all = union(...sets.map((mention) => mention.readings[0] ?? []));
  const largest = sets.map((mention) => mention.readings[0] ?? []).toSorted((a, b) => b.length - a.length)[0] ?? [];
  if (within(all, largest)) return { dates: largest, where: where.slice(0, 1), choices: [] };
  if (countedOff(scene.text, sets)) return { dates: all, where, choices: [], counted: true };
  // One more day beside a run may be for setting up: only days that stand alike are put together.
  const alike =
    sets.every((mention) => (mention.readings[0] ?? []).length === 1) || sets.every((mention) => (mention.readings[0] ?? []).length > 1);
  const told = sets.every((mention) => mention.said !== undefined) || joinedUp(scene.text, sets);
  if (alike && told && consecutive(all) && all.length <= LONGEST_STATED) return { dates: all, where, choices: [] };
  const [from, to] = [all[0], all.at(-1)];
  const span = from === undefined || to === undefined ? 0 : Temporal.PlainDate.from(from).until(to).days + 1;
  // "from the 9th ... closes on the 11th, all three days": the count tells that the days between are meant.
  if (span > all.length && span <= LONGEST_STATED && daysSaid(scene.text).some(({ days }) => days === span))
    return {
      dates: runFrom(from as string, span),
      where,
      choices: [],
    };
  // "11 April as well, i.e. both days"
  if (all.length === 2 && BOTH.test(scene.text) && !sets.some(({ before }) => /\b(?:or|not)\b/i.test(before)))
    return { dates: all, where, choices: [] };
  if (joinedUp(scene.text, sets)) return { dates: all, where, choices: [] };
  return { dates: [], where, choices: sets.map((mention) => mention.readings[0] ?? []).slice(0, 4), doubt: 'several' };
}
