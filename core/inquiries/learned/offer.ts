/**
 * Which amount of a message is offered for the work, as the learned weights make it of the words around each.
 */
import type { Amount } from '../money/units.ts';
import { isBrief, type Page } from './features.ts';
import { chancesIn, type Learned } from './models.ts';
import { payFeatures } from './pay.ts';

const LEAST = 0.6;
/** Below this chance an offer that rules find is asked about. */
export const leastOffer = (page: Page): number => (isBrief(page) ? 0 : LEAST);

/** How likely an amount is what is offered for the work, from 0 to 1. */
export const offerChance = (page: Page, amount: Amount, learned: Learned): number =>
  chancesIn(learned.offer, payFeatures(page, amount))['offer'] ?? 0;
