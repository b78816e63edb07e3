import { setupRow } from '../../db/setup.ts';
import { remembering } from './memory.ts';
import { os } from './os.ts';
import { take } from './take-inquiry.ts';

/** What is not given about home is taken from the stored set-up, where that stands in the same zone. */
const read = os.inquiries.read.handler(async ({ input: { remember, ...input }, context }) => {
  const setup = context.store.read((db) => setupRow(db)?.fields);
  const stored = setup?.home.zone === input.homeZone ? setup : undefined;
  const reading = await context.readMessage({
    ...input,
    homePlace: input.homePlace ?? stored?.home,
    homeCurrency: input.homeCurrency ?? stored?.currency,
  });
  return remember ? context.store.read((db) => remembering(db, reading)) : reading;
});

export const inquiries = { read, take };
