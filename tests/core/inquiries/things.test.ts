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
  [['full talk', '60-second trailer'], "Film our talk on 4 May? We'd like the full talk plus a 60-second trailer."],
  [['40 edited photos'], 'Could you photograph our opening on 4 May? From 15:00 to 19:00, about 40 edited photos, 480 EUR.'],
  [['90-second cut', '20 stills'], 'Film our picnic on 4 May? We would like a 90-second cut and the best 20 stills from the footage.'],
  [['individual tracks for each child'], 'Can you record our recital on 4 May? Two mics, stereo, and individual tracks for each child.'],
  [['Kurzfilms von 90 Sekunden'], 'Können Sie am 4. Mai filmen? Budget 700 € inkl. eines Kurzfilms von 90 Sekunden.'],
  [['gala completa editada'], '¿Puedes grabar nuestra gala el 4 de mayo? Queremos la gala completa editada.'],
  [['5-minute film', 'vows in full'], "Film our wedding on 4 May? What I'd love out of it is a 5-minute film and our vows in full."],
  [['20 minute film', 'trailer'], 'Could you edit our footage by 4 May? We need a 20 minute film and a trailer.'],
  [['short keepsake film'], 'Film us on 4 May? A short keepsake film would mean the world to him.'],
  [['raw footage'], 'Film our AGM on 4 May? We just need the raw footage, our editor will cut it.'],
  [
    ['aftermovie of 90 seconds'],
    'Could you film our event on 4 May? The client wants an aftermovie. One version please: aftermovie of 90 seconds.',
  ],
  [undefined, 'Film our banquet on 4 May? Same-day edit of the morning not needed.'],
  [undefined, 'Film our conference on 4 May? ISO recordings are handled by the AV company.'],
  [undefined, "Film the crowd on 4 May? The client wants a short film of it. The cut's ours."],
  [undefined, 'Film our day on 4 May? The AV firm makes the 3-minute recap.'],
  [undefined, 'El 4 de mayo estrenamos. Necesitamos grabar la función completa a dos cámaras.'],
  [undefined, 'We would love a little film of our fete on 4 May, could you film it?'],
  [undefined, 'Film our panel on 4 May? A 10-minute welcome film shown first, then the panel.'],
  [undefined, 'Could you just do a simple recording of the talk on 4 May?'],
  [undefined, "Film our screening on 4 May? It's a short film competition."],
  [undefined, 'Service required on 4 May: [x] livestream [ ] highlight film'],
  [undefined, 'Can you come on 4 May? We need ten minutes of filming, a morning of your time.'],
  [undefined, 'Livestream on 4 May? You would be playing in short videos between the talks.'],
])('%s: %s', (things, text) => expect(facts(text).deliverables).toEqual(things));
