/** The sample year, all of it. */
import { clients } from './clients.ts';
import { documents } from './documents.ts';
import { hands } from './hands.ts';
import { cards, personal, setup, ways } from './house.ts';
import { ahead } from './jobs/ahead.ts';
import { firstSeason } from './jobs/first-season.ts';
import { fourthSeason } from './jobs/fourth-season.ts';
import { now } from './jobs/now.ts';
import { secondSeason } from './jobs/second-season.ts';
import { thirdSeason } from './jobs/third-season.ts';
import { things } from './kit.ts';
import { presets } from './presets.ts';
import { money } from './money.ts';
import { templates } from './templates.ts';
import type { Sample } from './shape.ts';

export const sample: Sample = {
  begins: 'month -16',
  setup,
  cards,
  clients,
  hands,
  things,
  presets,
  ways,
  personal,
  documents,
  templates,
  jobs: [...firstSeason, ...secondSeason, ...thirdSeason, ...fourthSeason, ...now, ...ahead].map((job) => ({
    ...job,
    steps: [...job.steps, ...(money[job.key] ?? [])],
  })),
};
