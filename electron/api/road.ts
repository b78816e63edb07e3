/**
 * The stringline between two dates at home.
 */
import { stringlineOf } from '../../core/road/stringline.ts';
import { dateLater } from '../../core/time/wall.ts';
import { jobById } from '../../db/jobs.ts';
import { bookNear, jobOnBooks, midnight, ownSetup } from './book.ts';
import { os } from './os.ts';
import { notFound } from './trouble.ts';

const see = os.road.see.handler(({ input, context }) =>
  context.store.read((db) => {
    const now = context.now();
    const { zone } = ownSetup(db).home;
    const span = { from: midnight(input.from, zone), to: midnight(dateLater(input.from, input.days), zone) };
    const job = input.candidate === undefined ? null : jobById(db, input.candidate, now);
    if (job === undefined) throw notFound('This job');
    const book = bookNear(db, { ...span, now, leaveOutJob: job?.id ?? null });
    const laid = job && jobOnBooks(db, job);
    const ways = [...(laid?.ways ?? []), ...book.ways];
    return { stringline: stringlineOf({ book: { ...book, ways }, candidate: laid?.candidate ?? null, ...span, now }) };
  }),
);

export const road = { see };
