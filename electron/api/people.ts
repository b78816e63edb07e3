/**
 * Clients and hands: kept, put away, brought in from files, and folded together where they are the same.
 */
import type { Client, ClientFields, Hand } from '../../core/contract/people.ts';
import { listed } from '../../core/jobs/listed.ts';
import { doublesIn, type Somebody } from '../../core/people/doubles.ts';
import { mergedClient } from '../../core/people/merge.ts';
import { instantText } from '../../core/time/read.ts';
import { inkedTotals } from '../../core/people/given.ts';
import { holdsWords } from '../../core/words/holds.ts';
import { listedJobs } from '../../db/job-list.ts';
import { moveJobs } from '../../db/job-client.ts';
import { writeHistory } from '../../db/keeping.ts';
import {
  allAway,
  allClients,
  allHands,
  clientById,
  handById,
  insertClient,
  insertHand,
  setAway,
  updateClient,
  updateHand,
} from '../../db/people.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { broughtIn } from './people-bring.ts';
import { clientMarks, handMarks } from '../../core/people/marks.ts';
import { badInput, notFound, refused, stale } from './trouble.ts';

const clients = os.people.clients.handler(({ input, context }) =>
  context.store.read((db) => {
    const found = searched(input.text);
    const given = new Map<string | null, number>();
    for (const { clientId } of listedJobs(db)) given.set(clientId, (given.get(clientId) ?? 0) + 1);
    return {
      clients: allClients(db)
        .filter((one) => found(one.name, ...one.contacts.flatMap((contact) => [contact.name, contact.email])))
        .map((one) => ({ ...one, jobs: given.get(one.id) ?? 0 })),
    };
  }),
);

const client = os.people.client.handler(({ input, context }) =>
  context.store.read((db) => {
    const one = clientOr404(db, input.id);
    const given = listedJobs(db).filter((job) => job.clientId === input.id);
    return { client: one, jobs: listed(given, { text: '', states: undefined, now: context.now() }), made: inkedTotals(given) };
  }),
);

const saveClient = os.people.saveClient.handler(({ input, context }) =>
  deed(context, 'people.saveClient', {}, (db) => {
    const now = context.now();
    if (input.id === undefined) {
      const made = insertClient(db, input.fields, now);
      note(db, 'client', made.id, 'people.saveClient', `Client "${made.name}" was added.`, undefined, now);
      return { client: made };
    }
    const before = clientOr404(db, input.id);
    if (before.version !== input.version) throw stale(before.name, before, input.fields);
    note(db, 'client', before.id, 'people.saveClient', `Client "${input.fields.name}" was changed.`, before, now);
    return { client: updateClient(db, before, input.fields, now) };
  }),
);

const hands = os.people.hands.handler(({ input, context }) =>
  context.store.read((db) => {
    const found = searched(input.text);
    return { hands: allHands(db).filter((hand) => found(hand.name, hand.email, ...hand.rates.map((rate) => rate.role))) };
  }),
);

const hand = os.people.hand.handler(({ input, context }) => context.store.read((db) => ({ hand: handOr404(db, input.id) })));

const saveHand = os.people.saveHand.handler(({ input, context }) =>
  deed(context, 'people.saveHand', {}, (db) => {
    const now = context.now();
    if (input.id === undefined) {
      const made = insertHand(db, input.fields, now);
      note(db, 'hand', made.id, 'people.saveHand', `Hand "${made.name}" was added.`, undefined, now);
      return { hand: made };
    }
    const before = handOr404(db, input.id);
    if (before.version !== input.version) throw stale(before.name, before, input.fields);
    note(db, 'hand', before.id, 'people.saveHand', `Hand "${input.fields.name}" was changed.`, before, now);
    return { hand: updateHand(db, before, input.fields, now) };
  }),
);

const putAway = os.people.putAway.handler(({ input, context }) =>
  deed(context, 'people.putAway', {}, (db) => {
    const one = somebody(db, input.kind, input.id);
    if (one.version !== input.version) throw stale(one.name, one, input);
    const now = context.now();
    setAway(db, input.kind, input.id, now, now);
    note(db, input.kind, input.id, 'people.putAway', `"${one.name}" was put away.`, one, now);
    return {};
  }),
);

const takeOut = os.people.takeOut.handler(({ input, context }) =>
  deed(context, 'people.takeOut', {}, (db) => {
    const one = somebody(db, input.kind, input.id);
    const now = context.now();
    setAway(db, input.kind, input.id, null, now);
    note(db, input.kind, input.id, 'people.takeOut', `"${one.name}" was taken out again.`, one, now);
    return {};
  }),
);

const away = os.people.away.handler(({ context }) =>
  context.store.read((db) => ({ away: allAway(db).map(({ kind, id, name, awayAt }) => ({ kind, id, name, at: instantText(awayAt) })) })),
);

const bring = os.people.bring.handler(({ input, context }) =>
  input.try
    ? context.store.read((db) => broughtIn(db, input, null))
    : deed(context, 'people.bring', {}, (db) => broughtIn(db, input, { db, now: context.now() })),
);

const doubles = os.people.doubles.handler(({ context }) =>
  context.store.read((db) => {
    const pairs = (kind: 'client' | 'hand', all: Somebody[]) =>
      doublesIn(all).map(({ a, b, why }) => ({ kind, a: { id: a.id, name: a.name }, b: { id: b.id, name: b.name }, why }));
    return { doubles: [...pairs('client', allClients(db).map(clientMarks)), ...pairs('hand', allHands(db).map(handMarks))] };
  }),
);

const merge = os.people.merge.handler(({ input, context }) =>
  deed(context, 'people.merge', {}, (db) => {
    if (input.keep === input.fold) throw badInput([{ field: 'fold', sentence: 'is the same client; name two' }]);
    const keep = clientOr404(db, input.keep);
    const fold = clientOr404(db, input.fold);
    if (keep.version !== input.keepVersion) throw stale(keep.name, keep, input);
    if (fold.version !== input.foldVersion) throw stale(fold.name, fold, input);
    const fields = mergedClient(fieldsOf(keep), fieldsOf(fold));
    if (!fields)
      throw refused(`"${keep.name}" and "${fold.name}" have different tax ids.`, 'Clear the wrong tax id first, or keep them apart.');
    const now = context.now();
    moveJobs(db, fold.id, keep.id, now);
    setAway(db, 'client', fold.id, now, now);
    note(db, 'client', fold.id, 'people.merge', `"${fold.name}" was folded into "${keep.name}".`, fold, now);
    note(db, 'client', keep.id, 'people.merge', `"${fold.name}" was folded into this client.`, keep, now);
    return { client: updateClient(db, keep, fields, now) };
  }),
);

/** A test for the words of a search; without words everybody is found. */
function searched(text: string | undefined): (...words: string[]) => boolean {
  return text?.trim() ? holdsWords(text) : () => true;
}
function fieldsOf({ id: _id, version: _version, ...fields }: Client): ClientFields {
  return fields;
}
function clientOr404(db: ReadableDb, id: string): Client {
  const one = clientById(db, id);
  if (!one) throw notFound('This client');
  return one;
}
function handOr404(db: ReadableDb, id: string): Hand {
  const one = handById(db, id);
  if (!one) throw notFound('This hand');
  return one;
}
function somebody(db: ReadableDb, kind: 'client' | 'hand', id: string): Client | Hand {
  return kind === 'client' ? clientOr404(db, id) : handOr404(db, id);
}
function note(
  db: WritableDb,
  subject: string,
  subjectId: string,
  deedName: string,
  sentence: string,
  before: Client | Hand | undefined,
  at: number,
): void {
  writeHistory(db, { at, subject, subjectId, deed: deedName, sentence, before });
}

export const people = { clients, client, saveClient, hands, hand, saveHand, putAway, takeOut, away, bring, doubles, merge };
