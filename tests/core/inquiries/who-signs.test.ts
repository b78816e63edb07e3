/**
 * Who asks, where it is not only the name below: alone behind a greeting, among ranks and degrees, in small letters, by less than the head of the mail says,
 * and another who is to be answered; for which house somebody signs among its parts.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2027-04-12T09:12:00+01:00[Europe/London]', 'leeds');

describe('name', () => {
  test.each([
    ['Fergal', 'Kit, Fergal. Mad question. Could you film us on Saturday 17 April? £250.'],
    ['Naomi', 'Hi Kit, Naomi (Jonah’s mum). Could you film the party on 13 June? £250.'],
    ['Viv', 'Kit - Viv. Marvellous. Could you film the match on 27 March? £250.'],
    ['Roy Comeau', 'Kit, Roy Comeau again, Lodge 1127. Could you film the retirement on 14 May? £250.'],
    [undefined, 'Kit, Lovely. Can you film the party on 14 May? £250.'],
    [undefined, 'Hi Kit, Quick one. Can you film the party on 14 May? £250.'],
    [undefined, 'Hi Kit, Wedding. Can you film it on 14 May? £250.'],
    ['Derek Haworth', 'Can you film our parade on 14 November? £250.\nSqn Ldr (retd) Derek Haworth\nWetherby Veterans'],
    ['Arabella Pym', 'Can you film our sports day on 14 May? £250.\n\nMrs Arabella Pym (Games)\nFoxdown House'],
    ['Morag Dalgleish', 'Can you film our congress on 14 May? £250.\n\nMorag Dalgleish MRCVS\nHon. Secretary'],
    ['Marguerite Osei', 'Can you film our conference on 14 May? £250.\n\nMarguerite Osei, RN\nConference Chair'],
    ['Ann Marie MILLS', 'Can you film our conference on 14 May? £250.\n\nAnn Marie MILLS'],
    ['Ingrid S', 'Can you film our play on 14 May? £250. Ingrid S, SM'],
    [undefined, 'Can you film our play on 14 May? £250. Blake, Numerant'],
    ['Theres', 'Can you film our play on 14 May? £250. Bussi, Theres'],
    ['shannon', 'hey can u film my daughters 18th on 14 may? £250\n\nshannon 07700 900318'],
    ['mags', 'kit / can you film our show on 14 may / £250 / be there 9 / out by 11 / mags'],
    ['ravi', 'ravi here (kellerlicht). film our night in Hamburg on thurs 20 may? £250'],
    [undefined, 'film the match in Leeds on 14 may? £250. thanks heaps'],
    [
      'Oluwaseun Bankole',
      'From: Oluwaseun Bankole <seun@bracken.example>\nSubject: 2nd cam\n\nKit, second camera on 3 May? £350 flat.\n\nSeun',
    ],
    [
      'Corinne Abernethy',
      'Still hoping you can film it, £250.\nThanks, Corinne\n\nOn Oct 12, 2026, Corinne Abernethy wrote:\n> Breakfast on 14 May.',
    ],
    ['Mossie Considine', 'Can you film the dancing on 14 May? £250. Talk to Mossie Considine directly, 065 555 0112.\n\nCormac'],
    ['Kayleigh', 'hiya its Shannon. my mate Kayleigh is after someone to film a party 14 may. £150. her number is 07700 900772'],
    ['Sam Hale', 'Film our gala on 14 May? £250. My sister Jo will meet you there, her number is 07700 900111. Sam Hale'],
    ['Sam Hale', 'Film our gala on 14 May? £250. On the day, call Tom Ash on 07700 900333 for parking. Sam Hale'],
    ['Malte', 'Filmst du am 14. Mai in Kiel? 420 Euro. Bescheid bis Freitag, Gruß Malte von Förde Events'],
    ['Lotte van den Berg', 'Film je onze bruiloft op 14 mei? 900 euro. Groetjes Lotte van den Berg'],
    ['Torben', 'Hallo Kit, Torben von der Brandwache Medien. Kamera am 14. Mai in Jena, 350 Euro.'],
    [undefined, 'Hallo Kit, Taufe von Anna Bauer am 14. Mai in Jena filmen? 350 Euro.'],
    ['Marcy', "Hey Kit! Marcy from Year 9 netball! Our presentation night's on 12 June. Could you film it? £180"],
    ['Aroha', 'Could you film our do on 14 May? We have £900. Aroha xx 07700 900136'],
    ['Flurina Cadonau', 'Filmst du unser Konzert am 14. Mai? 450 Franken. Geht das? Flurina Cadonau, Tel 081 555 01 36'],
    ['Owen Pratt', 'Tess Farrow in Events at Halcyon Insurance asked me to write. Film our day on 14 May? £250. Thanks, Owen Pratt'],
    ['Wanda', 'Hi Kit, Wanda from church. Film our supper on 14 May? £150.'],
    ['Estelle', "Hi Kit, my name is Estelle, I'm the mother of the groom. Film our dinner on 14 May? £250."],
    ['Bea', 'Hi Kit! Assistant to Marlow Finch here. Film his launch on 14 May? £500. Thanks! - Bea'],
    ['Sipho', 'Kit, Sipho from the trail run. Film the finish on 14 May? £250.'],
    ['Paulina', 'Hey Kit, Paulina vom Bouldercup hier. Filmst du am 14. Mai? 600 Euro.'],
    ['Beryl Cattermole', 'Can you film our picnic on 14 May? £250.\n\nYours faithfully\n(Mrs) Beryl Cattermole\nHonorary Secretary'],
    ['Bogumiła Wrzosek', 'Can you film our day on 14 May? £250.\n\nYours faithfully,\ndr hab. Bogumiła Wrzosek'],
    ['Catriona Nicolson', 'Film our day on 14 May? £250.\n\nFarvel\nCatriona Nicolson\ncat@machair.example'],
    ['Rochelle Dobbins', "Film my dad's 70th on 14 May? £250. Thanks a ton, Rochelle Dobbins, rochelle.d@fern.example"],
    [
      'Mhairi Abernethy',
      'New message from your website:\n\nName: Mhairi Abernethy\nEmail: m@fleet.example\nSubject: Ceilidh\nMessage: Hi, can you film our ceilidh on 14 May? £150.',
    ],
    [
      'Tamara Rusk',
      'Hi Kit! It is Sunday June 14, not the 13th. Can you still film it?\n\nTamara\n\n> Film our final on June 13? What would it cost? Tamara Rusk',
    ],
    [undefined, 'Film our day on 14 May? £250.\n\nUnder Secretary (Programmes)\nMadhya Sahitya Mandal'],
    ['Wiremu', 'Film our day on 14 May? £250. Reply to Wiremu please, wiremu@tui.example. Thanks, Hana'],
    ['Irene Vidal', 'Departamento de Prensa. ¿Puedes grabar el 14 de mayo? 250 €. Contacto: Irene Vidal, 600 555 017'],
    ['Anneke', "Hi Kit, Anneke's my name. Film our run on 14 May? £250."],
    ['Piet Jacobs', 'Kun je ons concert op 14 mei filmen? 250 euro. Met muzikale groet, Piet Jacobs, secretaris'],
    ['Hazel Thorne', 'Kit - Hazel Thorne, Thorne & Daughters Funeral Directors. Film a service on 14 May? £180.'],
    [
      'Shawn',
      'Over to you, can you do it? From the boss: "Camera 2 for the Iron Range awards, Fri 14 May, 11:30 to 10pm. £600. Let us know by Monday - Shawn, Portage Screen Services"\n\nxx Becca',
    ],
    ['Naomi', "Hi Kit! I'm the bride's sister Naomi. Film the wedding on 14 May? £250. The bride is Leah."],
    ['Tess Wynn', "Oak & Anvil need someone filming on 14 May. £350. I'm their PR person, Tess Wynn."],
    ['Col Dwyer', 'Film our muster on 14 May? £500. Ta, Col Dwyer'],
    ['Kayleigh', 'film a party 14 may? £60. its a surprise for my sister Chantelle so dont message her. ta, Kayleigh'],
  ])('%s: %s', (name, text) => expect(read(text).contactName).toBe(name));
});

describe('organisation', () => {
  test.each([
    ['Boab Tyre Group', 'Film our roadshow on 14 May? £250.\n\nRegards,\nCallum Prewett\nEvent Logistics, Boab Tyre Group'],
    ['Wessex Rail Signalling', 'Film a day on 14 May? £250.\n\nMany thanks\nRoberta Chegwidden\nEarly Careers, Wessex Rail Signalling'],
    ['Hollis Ferry College', 'Film our day on 14 May? £250.\n\nTheodora Vance\nDean, School of Nursing\nHollis Ferry College'],
    ['School of Boatbuilding', 'Film our day on 14 May? £250.\n\nRegards\nAnn Tarrow\nSchool of Boatbuilding'],
    [undefined, 'Film our day on 14 May? £250.\n\nKindest regards\nLorraine Sykes\nFundraising & Events'],
    ['Corner Chair Pictures', 'B-cam on 14 May? $250.\n\nDashiell Oyelaran\nCorner Chair Pictures'],
    ['University of Strathallan', 'I write on behalf of the Court of the University of Strathallan. Film our day on 14 May? £250.'],
    ['Stanhope Ceramics', 'Hi, this is Gemma at Stanhope Ceramics, product launch on 12 June in Hull, can you film it? £350.'],
    ['Wimmera Tractor Shed Friends', "I'm the honorary curator of the Wimmera Tractor Shed Friends. Film our rally on 14 May? £600."],
    ['Temple Beth Or', "I'm writing for Rabbi Lena Sorkin of Temple Beth Or. Film our day on 14 May? £250."],
    ['Pennine Brass Association', 'Film our contest on 14 May? £250.\n\nBest wishes\nThe Contest Committee\nPennine Brass Association'],
    ['Harland & Wolfe LLP', 'Film our party on 14 May? £250.\n\nThanks\nChloe Ridley\nPA to the Partners\nHarland & Wolfe LLP'],
    ['Coastal Care Health', "I'm the EA to Dr Helen Marsh, CEO of Coastal Care Health. Film our day on 14 May? £250."],
    [
      'Zimmerei Hunziker + Söhne',
      'Film our day on 14 May? £250.\n\nFreundliche Grüsse\nBeat Hunziker\nLeiter Marketing, Zimmerei Hunziker + Söhne',
    ],
    ['Red Clay Public Relations', 'Film our day on 14 May? £250.\n\nCheers\nWinnifred Gallant\nRed Clay Public Relations'],
    [undefined, 'Hello Kit, Anneliese & Rob here. Film our wedding on 14 May? £250.'],
    [undefined, 'Hi Kit, Mirko hier, Kollege von Jana. Zweite Kamera am 14. Mai? 380 Euro.'],
    ['Royal Saffron Hotels', 'This is Neha Bhandari, Asst. Manager - Events, Royal Saffron Hotels. Film our day on 14 May? £250.'],
    ['Fondation Érable', 'Geneviève Roy de la Fondation Érable. Pouvez-vous filmer le gala du 14 mai ? 600 €.'],
    ['Marble Hill Productions', "I've started at Marble Hill Productions. Film our day on 14 May? £250."],
    ['Northmoor Building Supplies', 'Film our day on 14 May? £250.\nBest,\nChloe Barnes\nTemp, Facilities\nNorthmoor Building Supplies'],
    [undefined, "Hi, this is Raymond (Jia Min's dad). Film our lunch on 14 May? £250."],
    [
      'Hollis School',
      'Greetings from Hollis School. Film our day on 14 May? £250.\n\nWith regards,\nMr. Harpreet Gill\nCo-curricular In-charge',
    ],
    ['Sindicato de Panaderos', 'Te escribo de parte del Sindicato de Panaderos. ¿Puedes grabar el 14 de mayo? 500 euros.'],
    ['Ultramarin Films', "Salut Kit, c'est Garance de chez Ultramarin Films. Tu peux filmer le 14 mai ? 350 €."],
  ])('%s: %s', (organisation, text) => expect(read(text).organisation).toBe(organisation));
});

describe('where to reach the one who asks', () => {
  test.each([
    ["Film our gala on 12 June, £400? Venue tel 01904 555010 for parking. I'm on 07700 900112.", '07700 900112'],
    ['Film our gala on 12 June, £400? Please call me, not the town office: 01904 555010.\nShelagh Burnie', '01904 555010'],
    ["Transcribed message from 07700 900519: Hello, it's Maureen, can you film our gala on 12 June, two hundred pounds.", '07700 900519'],
    ['Film our gala on 12 June? Questions about the venue: Facilities, ph. 01904 555010', undefined],
  ])('phone in %s', (text, phone) => expect(facts(text).contactPhone).toBe(phone));
  test('who sends a mail again stands at the head of the first one', () =>
    expect(
      facts(
        'Kit, re-sending.\n\n> On Jan 14, 2026, at 9:05 AM, Perla Quint <perla@luz.example> wrote:\n> Film our gala on June 12?\n\nSame date. Can you film it?\n\nPerla Quint',
      ).contactEmail,
    ).toBe('perla@luz.example'));
  test('bills go elsewhere', () =>
    expect(facts('Film our gala, 12 June, in York please. Invoices to bursar@oak.example. Questions to jo@oak.example').contactEmail).toBe(
      'jo@oak.example',
    ));
});

describe('a part of a house is not the house', () => {
  test.each([
    ['Broadland Water Services', 'Oluchi Bannerman (she/her)\nPeople Team, Broadland Water Services'],
    ['Paddlestone Events', 'Saffron Ibbotson\nCrew & Logistics, Paddlestone Events'],
    ['Limestone Show Services', 'Noor Haddad\nLabour Coordination – Limestone Show Services'],
    ['Landesverband Muldental e. V', 'Henrike Aßmann\nReferat Öffentlichkeitsarbeit\nLandesverband Muldental e. V.'],
    ['Almenara Congresos S.L', 'Nuria Ferrandis\nDepartamento de Eventos\nAlmenara Congresos S.L.'],
    ['Atelier des Quais', 'Maud Lefranc-Petit\nChargée de production\nService Événementiel\nAtelier des Quais'],
    ['Marlstone College', 'Hugo Penhallow MA\nDeputy Head (Pastoral & Co-curricular)\nMarlstone College'],
    ['Harcourt Bligh', 'Saskia Delacroix\nSenior Events Advisor, Asia Pacific\nHarcourt Bligh'],
    ['Drakenstein Crew Agency (Pty) Ltd', 'Zanele Khumalo\nBookings | Drakenstein Crew Agency (Pty) Ltd'],
    [undefined, 'Rhona, Zeb and Aisling\nlibrary@studentbox.example'],
  ])('%s', (organisation, signature) => {
    const found = facts(`Hi Kit,\n\nCan you film our day in York on 14 May? £250.\n\nThanks\n${signature}`).organisation;
    expect(found?.replace(/\.$/, '')).toBe(organisation);
  });
  test.each([
    "I'm with the European office of a US university. Can you film our day in York on 14 May? £250.",
    'Got your name from the Northside Film Collective. Can you film our day in York on 14 May? £250.',
    'Marloes from Bureau Kade asked me to contact you. Can you film our day in York on 14 May? £250.',
  ])('nobody asks by what is named: %s', (text) => expect(facts(text).organisation).toBeUndefined());
});

test('a word in capitals late in a message is no name', () =>
  expect(
    facts('Film our gig in York on 14 May? £250, bring a fast lens because it is DARK. I forgot. Answer me until Wednesday. Luca')
      .contactName,
  ).toBe('Luca'));
