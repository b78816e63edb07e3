/**
 * Ways that were typed, and the estimate where none was.
 */
import { wayFinder } from '../../core/trips/ways.ts';
import { waySentence } from '../../core/trips/say.ts';
import { writeHistory } from '../../db/keeping.ts';
import { setupRow } from '../../db/setup.ts';
import { allWays, bookWays, forgetWay, keepWay, wayById, wayOfPair } from '../../db/trips.ts';
import { deed } from './deed.ts';
import { legs, removeLeg, setLeg } from './legs.ts';
import { os } from './os.ts';
import { legNews } from './leg-news.ts';
import { readTicket } from './tickets.ts';
import { badInput, notFound, stale } from './trouble.ts';

const ways = os.trips.ways.handler(({ context }) => ({ ways: context.store.read(allWays) }));

const setWay = os.trips.setWay.handler(({ input, context }) =>
  deed(context, 'trips.setWay', {}, (db) => {
    const { fields, version } = input;
    if (fields.from.key === fields.to.key) throw badInput([{ field: 'to', sentence: 'is the same place as from; a way needs two.' }]);
    const before = wayOfPair(db, fields.from.key, fields.to.key, fields.mode);
    // Whoever read the way names its version; typing a way anew over a known one needs none, the pair and mode say which is meant.
    if (version !== undefined && version !== before?.version) throw stale('This way', before ?? null, fields);
    const now = context.now();
    const way = keepWay(db, fields, now);
    writeHistory(db, {
      at: now,
      subject: 'way',
      subjectId: way.id,
      deed: 'trips.setWay',
      sentence: `${fields.from.name} to ${fields.to.name} takes ${fields.minutes} min (${fields.mode}).`,
      before: before ?? null,
    });
    return { way };
  }),
);

const forget = os.trips.forgetWay.handler(({ input, context }) =>
  deed(context, 'trips.forgetWay', {}, (db) => {
    const before = wayById(db, input.id);
    if (!before) throw notFound('This way');
    if (before.version !== input.version) throw stale('This way', before, null);
    forgetWay(db, input.id);
    const sentence = `${before.from.name} to ${before.to.name} was forgotten.`;
    writeHistory(db, { at: context.now(), subject: 'way', subjectId: input.id, deed: 'trips.forgetWay', sentence, before });
    return {};
  }),
);

const estimate = os.trips.estimate.handler(({ input, context }) => {
  const unit = context.store.read((db) => setupRow(db)?.fields.distance ?? 'km');
  const way = wayFinder(context.store.read((db) => bookWays(db, unit)))(input.from, input.to);
  return {
    source: way.source,
    shortMinutes: way.shortMinutes,
    longMinutes: way.longMinutes,
    km: Math.round(way.km * 1000) / 1000,
    sentence: waySentence(way, unit),
  };
});

export const trips = { readConfirmation: readTicket, legs, setLeg, legNews, dropLeg: removeLeg, ways, setWay, forgetWay: forget, estimate };
