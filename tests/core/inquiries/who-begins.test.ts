/**
 * Who says in the first words who they are, by rank, trade, town or two names, and what only looks so; and the whole name of a body.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2027-04-12T09:12:00+01:00[Europe/London]', 'leeds');
const asked = 'Could you film our concert in Leeds on Friday 14 May 2027? We can pay £250.';

describe('who begins', () => {
  test.each([
    ['Kia ora Kit, Marama the celebrant.', 'Marama'],
    ['Hiya Kit, Fiona x.', 'Fiona'],
    ['Kit! Anders @ Pebblestack.', 'Anders'],
    ['Hey there Kit, Ewan MacHale out of Mabou.', 'Ewan MacHale'],
    ['Kit, hi, Marguerite Oyel, I plan weddings.', 'Marguerite Oyel'],
    ['Coucou, Clémence de la galerie.', 'Clémence'],
    ['Grace and peace. Deacon Barlow-Hale.', 'Barlow-Hale'],
    ['Dana / Thunderbolt here.', 'Dana'],
    ['Hi Dev, Officer Brandt Kell here, community outreach.', 'Brandt Kell'],
    ["Hi Kit, it's Mei from Pear Tree Montessori!", 'Mei'],
    ['Hallo Kit, ek is Riaan.', 'Riaan'],
    ['Ciao! Sono la Chiara del coro.', 'Chiara'],
    ['Hello,\n\nhere Itziar, from the cookery school.', 'Itziar'],
    ['Hi Kit, my name is Anahera Poha & I run a pottery school.', 'Anahera Poha'],
    ['Morning Kit! Thandeka from the Whale Coast 10 (the charity run).', 'Thandeka'],
    ['Hoi Kit, Fasnacht!', undefined],
    ['Gideon, Nightheron.', undefined],
    ['Friend of a friend, hello.', undefined],
    ["It's May here and warm.", undefined],
    ['Dear Officer, good day.', undefined],
    ['Hi Kit, Camera the size of a shoe.', undefined],
  ])('%j', (words, name) => expect(read(`${words} ${asked}`).contactName).toBe(name));
});

describe('for whom', () => {
  test.each([
    ['I write on behalf of the Alumni Association of St. Brendan’s School.', "Alumni Association of St. Brendan's School"],
    ["I'm a paralegal at Hobart, Quill & Stanza LLP.", 'Hobart, Quill & Stanza LLP'],
    ["Hi, this is Dolores Quin calling, I'm with the Casa Serena seniors' choir.", "Casa Serena seniors' choir"],
    ['Hello sir this is Kavya from Kadambari Niketan school.', 'Kadambari Niketan school'],
    ['I am writing on behalf of the Harvest Committee of Mount Gerizim Assembly.', 'Mount Gerizim Assembly'],
    ['hiya this is Aoife Breath from Cois Tuinn Credit Union em it’s about the meeting.', 'Cois Tuinn Credit Union'],
    ["Kit, this is Father Anselm at St. Hedwig's in Otley.", "St. Hedwig's"],
    ['Kit, Yolanda Prew, Watch Night committee, Mt. Tabor Chapel in Otley.', 'Mt. Tabor Chapel'],
    ['Kit! Anders @ Pebblestack.', 'Pebblestack'],
    ['I am the secretary of the Otley Film Society, Leeds and Bradford.', 'Otley Film Society'],
  ])('%j', (words, body) => expect(read(`${words} ${asked}`).organisation?.replace('’', "'")).toBe(body));
});

describe('who is to be answered', () => {
  const mail =
    'From: Events <events@helva.example>\nSubject: Investor Day\n\nDear team,\nplease record our day in Leeds on 24 May 2027.\nBest, Joachim Spree, Helva AG';
  test('the one who takes the answer, not the client below', () => {
    const { contactName } = read(
      `Hi Kit, can you take this over from us? Please answer me, not the client. Thanks, Nadja\n\nNadja Inder\nRund Film GmbH\nnadja@rund.example\n\n${mail}`,
    );
    expect(contactName).toBe('Nadja Inder');
  });
  test('she, not me', () => {
    expect(read(`${asked} Please ring her, not me: Bernadette Quill, 0491 570 158.\n\nHugh`).contactName).toBe('Bernadette Quill');
  });
  test('a verb before a number is nobody', () => {
    expect(read(`${asked} Pls call 303-555-0187\n\nShira`).contactPhone).toBe('303-555-0187');
  });
});
