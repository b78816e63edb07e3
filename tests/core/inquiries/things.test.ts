/**
 * What is to be handed over: the thing that is said in full and not its mention before, what is wanted and not what exists or is shown.
 */
import { expect, test } from 'vitest';
import { facts } from './reading.ts';

test.each([
  [['60-second promo'], "Film our fair on 4 May? We'd like a short promo. To be exact, a 60-second promo."],
  [['60-second cut', '3-minute film'], "Film our fair on 4 May? We'd want two edits: a 60-second cut and a 3-minute film."],
  [['12 minute film'], 'Could you edit our footage? We need a 12 minute film. Final cut by 20 February please.'],
  [
    ['two teasers of 15 to 20 seconds', 'one trailer'],
    'Film our fair on 4 May? Deliverables: two teasers of 15 to 20 seconds, one trailer.',
  ],
  [['six 5-minute chapters'], "Shoot in Leeds on 4 May. We'd like six 5-minute chapters."],
  [['tribute of eight to ten minutes'], 'Film us on 4 May? The family would like a tribute of eight to ten minutes.'],
  [['full mass'], 'Film us on 4 May? My mother wants the full mass.'],
  [
    ['film de 20 minutes', 'teaser de 1 minute'],
    'Pouvez-vous filmer le 4 mai ? Livrables : un film de 20 minutes et un teaser de 1 minute.',
  ],
  [['drei kurze Clips'], 'Können Sie am 4. Mai filmen? Wir wünschen uns drei kurze Clips.'],
  [undefined, 'Could you just do a simple recording of the talk on 4 May?'],
  [undefined, "Film our screening on 4 May? It's a short film competition."],
  [undefined, 'Service required on 4 May: [x] livestream [ ] highlight film'],
  [undefined, 'Can you come on 4 May? We need ten minutes of filming, a morning of your time.'],
  [undefined, 'Livestream on 4 May? You would be playing in short videos between the talks.'],
])('%s: %s', (things, text) => expect(facts(text).deliverables).toEqual(things));
