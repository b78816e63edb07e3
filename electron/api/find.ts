/**
 * The find box: jobs, papers, people, rate cards and places that hold the typed words.
 */
import type { Found } from '../../core/contract/find.ts';
import { holdsWords } from '../../core/words/holds.ts';
import { searchPlaces } from '../../core/places/search.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { wallAt } from '../../core/time/read.ts';
import { findable } from '../../db/find.ts';
import { setupRow } from '../../db/setup.ts';
import { homeZone } from './job-facts.ts';
import { os } from './os.ts';

/** Places come last, and only so many: they are found more often than meant. */
const PLACES = 3;

const search = os.find.search.handler(({ input, context }) => {
  const holds = holdsWords(input.text);
  return context.store.read((db) => {
    const { jobs, papers, cards, clients, hands } = findable(db);
    const zone = homeZone(db, context);
    const titles = new Map(jobs.map((job) => [job.id, job.title]));
    const found: Found[] = [
      ...jobs
        .filter((job) => holds(job.title, job.organisation, job.contactName, job.contactEmail, job.place?.name ?? '', job.notes))
        .map((job): Found => ({
          kind: 'job',
          id: job.id,
          jobId: job.id,
          title: job.title,
          second: joined(job.organisation, job.place?.name, job.stage),
        })),
      ...papers
        .filter((paper) => holds(paper.name, titles.get(paper.jobId ?? '') ?? ''))
        .map((paper): Found => ({
          kind: 'paper',
          id: paper.id,
          jobId: paper.jobId,
          title: paper.name,
          second: `made ${dateInWords(wallAt(paper.madeAt, zone).slice(0, 10))}`,
        })),
      ...clients
        .filter(({ name, contacts }) => holds(name, ...contacts.flatMap((one) => [one.name, one.email])))
        .map(({ id, name, contacts }): Found => ({
          kind: 'client',
          id,
          jobId: null,
          title: name,
          second: joined(contacts[0]?.name, contacts[0]?.email),
        })),
      ...hands
        .filter(({ name, email, rates }) => holds(name, email, ...rates.map((rate) => rate.role)))
        .map(({ id, name, rates, home }): Found => ({
          kind: 'hand',
          id,
          jobId: null,
          title: name,
          second: joined(...new Set(rates.map((rate) => rate.role)), home?.name),
        })),
      ...cards
        .filter((card) => holds(card.name, card.role))
        .map((card): Found => ({
          kind: 'rate card',
          id: card.id,
          jobId: null,
          title: card.name,
          second: joined(card.role, card.currency, `from ${card.validFrom}`),
        })),
    ];
    const places = searchPlaces(context.gazetteer(), input.text, { near: setupRow(db)?.fields.home ?? null, limit: PLACES });
    return {
      found: [
        ...found,
        ...places.map((place): Found => ({
          kind: 'place',
          id: place.key,
          jobId: null,
          title: place.name,
          second: joined(place.region, place.country),
        })),
      ].slice(0, input.limit),
    };
  });
});

function joined(...parts: (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join(', ');
}

export const find = { search };
