/**
 * Reading an inquiry: from a pasted message to facts, each with the words that it came from, and questions for what is not certain.
 * A fact is stated only when one reading is left; two readings are a question, none is a question too. Nothing is guessed in silence.
 */
import type { FactName, InquiryFields, Question, Reading, Span } from '../contract/inquiries.ts';
import { TEXT_LENGTH } from '../contract/parts.ts';
import type { GazetteerPlace } from '../places/gazetteer.ts';
import { placesNamed } from '../places/search.ts';
import { ruledBy } from './kind.ts';
import { isBrief, pageOf } from './learned/features.ts';
import { agreedCalls } from './learned/call.ts';
import { agreedDays, openDays } from './learned/days.ts';
import { leastOffer, offerChance } from './learned/offer.ts';
import { agreedParty, letterOf } from './learned/party.ts';
import { agreedPay } from './learned/pay.ts';
import { agreedReply } from './learned/reply.ts';
import { agreedRole } from './learned/role.ts';
import { asks, weighed } from './learned/said.ts';
import { agreedTowns } from './learned/town.ts';
import { withSurestHours } from './learned/surest.ts';
import { withEarlierMail } from './earlier-mail.ts';
import { lookAt, type ReadInput } from './look.ts';
import { countriesPaying, currencyOf } from './money/currency.ts';
import { isFromThere } from './money/from-there.ts';
import { FIRST_PAGES } from './parts/lines.ts';
import { takenBy } from './parts/stretches.ts';
import { askerOf } from './people/asker.ts';
import { withPlainBody } from './people/plainly.ts';
import { placeOf, placesIn } from './places/find.ts';
import { knownTown, writtenAtHome, zoneTown } from './places/home.ts';
import {
  budgetChoices,
  callAsked,
  dayChoices,
  daysAsked,
  deadlineChoices,
  missingQuestions,
  partyQuestion,
  question,
  wallChoices,
} from './questions.ts';
import { besideDays } from './settle/beside-days.ts';
import { budgetOf } from './settle/budget.ts';
import { callsOf } from './settle/calls.ts';
import { daysNamed, withChosenDays } from './settle/chosen-days.ts';
import { daysOf, daysSaid } from './settle/days.ts';
import { consecutive } from './settle/days-among.ts';
import { eventDays } from './settle/event.ts';
import { heldAgainstAll } from './settle/held-against.ts';
import { isOneDay } from './settle/one-day.ts';
import { lengthIsOpen } from './settle/open-length.ts';
import { countriesOf, placeOfJob } from './settle/place.ts';
import { likelyHours } from './settle/unlikely.ts';
import { settledOnly } from './settle/unsettled-hours.ts';
import { replyOf } from './settle/reply.ts';
import { detailsOf, type EventDays, type Where } from './settle/scene.ts';
import { deliverablesIn } from './work/deliverables.ts';
import { nothingToFilm } from './work/edit.ts';
import { undoubtedCall } from './doubtful-call.ts';
import { withSoleDate } from './sole-date.ts';
import { isFromAfar } from './work/from-afar.ts';
import { filmedUnsaid, roleAsked } from './work/role.ts';

/** Places are sought among so many words. */
const MOST_WORDS = 6_000;

/**
 * The days, where a person chose one of those that the message leaves open: it is read as one that names them alone; and whether it asks for
 * work whatever its words.
 */
type Chosen = { chosenDays?: readonly string[] | undefined; asks?: boolean | undefined };

/** What a message is read with, but for the lists that ship with the program. */
export type ToRead = Omit<ReadInput & Chosen, 'gazetteer' | 'learned'>;

/** A first day of which the sender does not know yet how many follow. */
const endIsOpen = (front: string, { dates, dropped, counted, where }: EventDays): boolean =>
  dates.length === 1 && !dropped && !counted && lengthIsOpen(front, where[0]);

/**
 * Read a message.
 * @throws RangeError for a text over 200,000 characters or a `receivedAt` that is no moment with a zone
 */
export function readInquiry(input: ReadInput & Chosen): Reading {
  const received = Temporal.ZonedDateTime.from(input.receivedAt, { offset: 'use' }).withTimeZone(input.homeZone);
  return withEarlierMail(input.text, received, readMessage(input), ({ receivedAt = input.receivedAt, ...again }) =>
    readMessage({ ...input, text: input.text, ...again, receivedAt, chosenDays: input.chosenDays ?? again.chosenDays }),
  );
}

function readMessage(input: ReadInput & Chosen): Reading {
  if (input.text.length > TEXT_LENGTH)
    throw new RangeError('The message is longer than 200,000 characters; paste the part that asks for dates.');
  const sight = lookAt(input);
  const { plain, parts, body, head, whole, tokens, scene: seen, homeCountry, homeCurrency, phones, takenToken } = sight;
  const front = body.slice(0, FIRST_PAGES);
  const page = pageOf(seen, phones, head);
  const told = weighed(page, input.learned);
  const heard = input.chosenDays ? withChosenDays(told, input.chosenDays) : told;
  const { times, amounts } = heard;

  const ahead = heard.dates.filter(
    (mention) => !mention.past && (mention.readings.length > 0 || mention.vague || mention.doubt !== undefined),
  );
  const ofWork = ahead.some(({ said }) => said === undefined || said === 'event' || said === 'show' || said === 'call' || said === 'wrap');
  const details = { dated: ofWork, elsewhere: ahead.length > 0 && !ofWork, timed: times.length > 0, details: detailsOf(heard) };
  // Whoever chose days has said that it asks for work.
  if (!input.chosenDays && !input.asks && !asks(page, input.learned, ruledBy(front, whole, details)))
    return { isInquiry: false, fields: {}, questions: [], spans: [] };

  const fields: InquiryFields = {};
  const spans: Span[] = [];
  const questions: Question[] = [];
  const point = (field: FactName, ...where: Where[]): void => {
    for (const { start, end } of where) {
      const [from, to] = [plain.from(start), plain.from(end - 1) + 1];
      spans.push({ field, start: from, end: to, text: input.text.slice(from, to) });
    }
  };

  const things = deliverablesIn(front);
  const asked = roleAsked(front);
  // Who asks for a film of a day asks for somebody to shoot it.
  const made = things.slice(0, 1).map(({ start, end }) => ({ role: 'shoot' as const, start, end }));
  const wished = [asked, made, filmedUnsaid(front, plain.text.slice(0, FIRST_PAGES))].find(({ length }) => length > 0) ?? [];
  const roles = agreedRole(wished, page, input.learned);
  const role = roles.length === 1 ? roles[0] : undefined;
  // An edit has its day of delivery and that of the pictures: neither is a day on which I must be there, unless an hour to come is told.
  const called = times.some(({ said }) => said === 'call');
  const unfilmed = nothingToFilm(front);
  const atHome = role?.role === 'edit only' ? unfilmed || !called : role === undefined && unfilmed && !called;
  const scene = input.chosenDays || atHome ? heard : withSoleDate({ ...page, scene: heard }, input.learned);
  const { dates } = scene;
  const found = heldAgainstAll(scene, eventDays(scene));
  const openEnd = endIsOpen(front, found);
  const event = input.chosenDays
    ? { dates: [...input.chosenDays], where: found.where, choices: [] }
    : atHome
      ? openDays(found)
      : agreedDays(found, { ...page, scene }, input.learned, openEnd);
  const [first, last] = [event.dates[0], event.dates.at(-1)];
  const longer = event.dates.length === 1 && !event.dropped ? daysSaid(body).find(({ days }) => days > 1) : undefined;
  const openLength = event === found ? openEnd : endIsOpen(front, event);
  if (first !== undefined && last !== undefined) {
    fields.start = first;
    point('start', ...event.where);
    if (openLength) {
      questions.push(question('end', 'How many days it takes is not known yet. Which is the last day?'));
    } else if (longer) {
      // One date and more days: it may be the first of them or the only one that is named.
      const end = Temporal.PlainDate.from(first)
        .add({ days: longer.days - 1 })
        .toString();
      questions.push(
        question('end', `${longer.days} days are said and one date. Which is the last day?`, dayChoices([[end], [first]], 'end')),
      );
    } else {
      fields.end = last;
      point('end', ...event.where);
    }
  } else if (event.choices.length > 0) {
    questions.push(question('start', daysAsked(event), dayChoices(event.choices, 'start')));
    questions.push(question('end', 'Which last day is meant?', dayChoices(event.choices, 'end')));
    point('start', ...event.where);
  } else if (event.doubt === 'impossible') {
    questions.push(question('start', 'There is no such date. Which day is meant?'));
    point('start', ...event.where);
  } else {
    questions.push(question('start', 'On which dates is it?', dayChoices(daysNamed(scene), 'start')));
  }

  const weighedPage = { ...page, scene };
  const agreed = agreedCalls(callsOf(scene, event), weighedPage, input.learned);
  const surest = withSurestHours(agreed, weighedPage, event, input.learned);
  const hours = likelyHours(settledOnly(scene, surest, event.dates), event.dates);
  const calls = undoubtedCall(hours, event.dates, page, input.learned);
  if (calls.firstCall) {
    fields.firstCall = calls.firstCall.wall;
    point('firstCall', ...calls.firstCall.where);
  } else if (calls.callChoices) {
    questions.push(question('firstCall', callAsked(calls.callChoices), wallChoices(calls.callChoices.walls)));
    point('firstCall', calls.callChoices.where);
  }
  // Where the last day is open, so is the wrap on it.
  if (calls.lastWrap && fields.end !== undefined) {
    fields.lastWrap = calls.lastWrap.wall;
    point('lastWrap', ...calls.lastWrap.where);
  } else if (calls.wrapChoices) {
    questions.push(
      question(
        'lastWrap',
        calls.wrapChoices.why === 'show' ? 'That is when it ends. When is your wrap?' : 'When is the wrap?',
        wallChoices(calls.wrapChoices.walls),
      ),
    );
    point('lastWrap', calls.wrapChoices.where);
  }

  const days = openLength ? { where: [], choices: [] } : daysOf(body, event);
  if (days.days !== undefined) {
    fields.days = days.days;
    point('days', ...days.where);
  } else if (days.choices.length > 0) {
    questions.push(
      question(
        'days',
        'The dates and the number of days do not agree. How many days is it?',
        days.choices.map((count) => ({ label: String(count), value: count })),
      ),
    );
    point('days', ...days.where);
  }

  const countries = countriesPaying(amounts);
  const home = input.homePlace ?? zoneTown(input.gazetteer, input.homeZone);
  const hints = { home, homeCountry, countries };
  const { towns, areas } = placesIn(body, tokens.slice(0, MOST_WORDS), input.gazetteer, hints, takenToken);
  const nowhere = role?.role === 'edit only' && isFromAfar(front);
  const find = (name: string): GazetteerPlace[] => placesNamed(input.gazetteer, name);
  const place = placeOfJob(
    nowhere
      ? []
      : agreedTowns(besideDays(body, towns, event, dates), areas, { page, parts }, { home, find, hints, learned: input.learned }),
    nowhere ? [] : areas,
    writtenAtHome(
      homeCountry,
      countries,
      phones.map(({ start, end }) => body.slice(start, end)),
    ),
  );
  if (place.name !== undefined) fields.place = place.name;
  if (place.country !== undefined) fields.country = place.country;
  point('place', ...place.where);
  if (place.country !== undefined) point('country', ...place.countryWhere);
  if (place.ask) questions.push(question(place.ask.field, 'Which of these is it?', place.ask.choices));

  if (role) fields.role = role.role;
  else if (roles.length > 1)
    questions.push(
      question(
        'role',
        'What is asked of you?',
        roles.map((hit) => ({ label: hit.role, value: hit.role })),
      ),
    );
  point('role', ...roles);

  const reply = agreedReply(replyOf(scene), { ...page, scene }, input.learned);
  if (reply.wall !== undefined) fields.replyBy = reply.wall;
  else if (reply.choices.length > 0)
    questions.push(question('replyBy', 'By when exactly is an answer wanted?', deadlineChoices(reply.choices, input.homeZone)));
  point('replyBy', ...reply.where);

  const noAmount = takenBy([...dates, ...times, ...phones]);
  const townIn = (town: string): string | undefined => find(town).find((found) => knownTown(found, input.homePlace))?.country;
  const places = countriesOf(place);
  const there = places.filter((country) => isFromThere(whole, country, townIn));
  const offer = budgetOf(body, amounts, (where) => noAmount(where.start), {
    // An edit is one job, however many days it takes.
    days: fields.role === 'edit only' ? 1 : fields.start !== undefined ? fields.days : isOneDay(scene, event, fields.days) ? 1 : undefined,
    home: there.length === 1 ? undefined : homeCurrency,
    places: (there.length === 1 ? there : places).flatMap((country) => currencyOf(country) ?? []),
    chance: (amount) => offerChance(weighedPage, amount, input.learned),
    least: leastOffer(page),
  });
  const budget = agreedPay(offer, weighedPage, input.learned);
  if (budget.budget) fields.budget = budget.budget;
  if (budget.ask) questions.push(question('budget', budgetAsk(budget.ask), budgetChoices(budget.choices)));
  point('budget', ...budget.where);

  const isTown = (name: string): boolean => find(name).some((found) => knownTown(found, input.homePlace));
  const asker = askerOf(plain.text, parts, isTown);
  const { people, doubted } = withPlainBody(plain.text, asker, agreedParty(asker, letterOf(sight), isBrief(page), input.learned));
  for (const [field, fact, doubt] of [
    ['contactName', people.name, doubted.name],
    ['contactEmail', people.email, undefined],
    ['contactPhone', people.phone, undefined],
    ['organisation', people.organisation, doubted.organisation],
  ] as const) {
    const found = fact ?? doubt;
    if (!found) continue;
    if (fact) fields[field] = fact.value;
    else questions.push(partyQuestion(field, found.value));
    point(field, found);
  }

  if (things.length > 0) {
    // As the sender wrote them: dashes and all.
    fields.deliverables = things.map(({ start, end }) => input.text.slice(plain.from(start), plain.from(end - 1) + 1).replace(/\s+/g, ' '));
    point('deliverables', ...things);
  }

  return {
    isInquiry: true,
    fields,
    questions: [...questions, ...missingQuestions(fields, questions)],
    spans: spans.toSorted((a, b) => a.start - b.start || a.end - b.end),
    ...(first !== undefined && !longer && !consecutive(event.dates) ? { datesFound: event.dates } : {}),
    ...(place.found ? { placeFound: placeOf(place.found, fields.place ?? '') } : {}),
  };
}

function budgetAsk(why: 'amount' | 'currency' | 'per'): string {
  if (why === 'amount') return 'Which amount do they mean?';
  return why === 'currency' ? 'Which currency do they mean?' : 'Is that for a day or for the whole job?';
}
