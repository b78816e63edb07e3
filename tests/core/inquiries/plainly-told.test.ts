/**
 * A body that stands behind the name of who signs, or behind words that say for whom somebody writes, is stated; a part of a house, an office and
 * an occasion are not.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const asked = 'Could you film our day in Fargo on Saturday 12 December, 2pm to 9pm? One camera, $600.';

describe('at the end', () => {
  test.each([
    ['Oriel, Thistle Trails', 'Thistle Trails'],
    ['Best, Anouk – KadeCrew', 'KadeCrew'],
    ['Tamsin Roke\nWillowbank Equipment', 'Willowbank Equipment'],
    ['Thx n rgds\nHarish Moti\nFieldside Leagues', 'Fieldside Leagues'],
    ['Iria // Kollektiv Uferlicht // iria@uferlicht.example', 'Kollektiv Uferlicht'],
    ['Ilse Kroon, Teatr Latarnia, ilse@latarnia.example', 'Teatr Latarnia'],
    ['Yours sincerely,\nNiall Garrow\nPartner\nFor and on behalf of Garrow Leith LLP', 'Garrow Leith LLP'],
    ['All best\nMorven Haig\nHead of Events\nFernbank Events\nmorven@fernbank-events.example', 'Fernbank Events'],
    ['Many thanks\nBisi Adeyo\nSchools Outreach\nDon Ridge Engineering Trust\nb.adeyo@dret.example', 'Don Ridge Engineering Trust'],
    ['Best\nHanne Lutz\nAgentur Seewind & Partner', 'Agentur Seewind & Partner'],
    ['Thanks, Reto Amsler, Föhn & Partner', 'Föhn & Partner'],
    ['Odile Marsh, Training Mgr, Brightmoor Window & Door, 218-555-0150', 'Brightmoor Window & Door'],
    ['Regards\nImke Bode\nCommunity Fundraiser\nGlowworm House Hospice\nimke.b@glowwormhospice.example', 'Glowworm House Hospice'],
    ['Regards\nTheodora Pym\nSandmere Communications, theodora@sandmere.example', 'Sandmere Communications'],
    ['Mel\nWattle Lane Dance', 'Wattle Lane Dance'],
    ['Wendell Prouse\nHarbour City Forum on Ageing', 'Harbour City Forum on Ageing'],
    ['Groet,\nWietske Hoek\nCoördinator evenementen\nFries Waterberaad\nw.hoek@waterberaad.example', 'Fries Waterberaad'],
    ['Met vriendelijke groet,\nPier Quist, ab actis\nL.S.V. Noorderzon', 'L.S.V. Noorderzon'],
    ["Bien à vous,\nMaryse Le Goff\nPrésidente de l'association Pointes et Compagnie\n06 39 98 41 07", 'Pointes et Compagnie'],
    ['Groet,\nSjoerd Wiersma\nPlanning Polderstream\nplanning@polderstream.example', 'Polderstream'],
    ['Viele Grüße\nKatja Noll\nSekretariat, Havelgrund-Schule\n0355 555 0117', 'Havelgrund-Schule'],
  ])('%j', (foot, body) => expect(facts(`Hello,\n\n${asked}\n\n${foot}`).organisation).toBe(body));
});

describe('at the beginning', () => {
  test.each([
    ["I'm writing from the University of the Northern Levels about our summer school.", 'University of the Northern Levels'],
    [
      'On behalf of the Pacific Society of Harbour Masters, I would like to ask whether you are free.',
      'Pacific Society of Harbour Masters',
    ],
    ['Sandbar College will hold its convocation this winter.', 'Sandbar College'],
    ['The Nordic Network of Puppet Museums will meet this winter.', 'Nordic Network of Puppet Museums'],
    ['der Musikverein Unterhalm sucht jemanden, der filmt.', 'Musikverein Unterhalm'],
  ])('%j', (words, body) => expect(facts(`Dear Kit,\n\n${words} ${asked}\n\nKind regards\nOdalys Brenn`).organisation).toBe(body));
});

describe('in the first words, behind who speaks', () => {
  test.each([
    ['Hi Kit, Camille from Nordlys again.', 'Nordlys'],
    ['Hi Kit, Xavi from Bullenda.', 'Bullenda'],
    ['Hey Kit, Bo at Kormoran.', 'Kormoran'],
    ['kit. ravi from NACHTLICHT.', 'NACHTLICHT'],
    ['hey kit, zara from thimble & wren weddings.', 'thimble & wren weddings'],
    ['Hi Kit, Janine at Skipwell tennis club.', 'Skipwell tennis club'],
  ])('%j', (words, body) => expect(facts(`${words} ${asked}`).organisation).toBe(body));

  test.each([
    ['Hey, this is Cody from the curling league.'],
    ['hey its dario from the brewery thing last fall.'],
    ['Hi Kit, it is Yanis from the parkour collective!'],
    ['Hi, referral from Jonah.'],
    ['Hi Kit, Bo from Leeds.'],
  ])('nobody: %j', (words) => expect(facts(`${words} ${asked}`).organisation).toBeUndefined());
});

describe('nobody', () => {
  test.each([
    ['Norbert Chase, Activities\n218-555-0150'],
    ['Kind regards\nFabio Berna-Kell\nSegretariato\nsegretariato@example.example'],
    ['Regards\nOdile Marsh\nHead of Events'],
    ['Regards\nOdile Marsh\nCommunity Fundraiser'],
    ['Regards\nOdile Marsh\nLearning & Dev'],
    ['Odile Marsh, Training Mgr, 218-555-0150'],
  ])('%j', (foot) => expect(facts(`Hello,\n\n${asked}\n\n${foot}`).organisation).toBeUndefined());
});

describe('what the first sentence speaks of', () => {
  test.each([
    ['Kowhai Lane School turns 75 this year and we are marking it.', 'Kowhai Lane School'],
    ['The Rossaig Fiddlers have members on eleven islands, and we meet once a year.', 'Rossaig Fiddlers'],
    ['The Sauvetage Fluvial de Lormont trains its new divers this winter and we need a film.', 'Sauvetage Fluvial de Lormont'],
    ['The Berg Valley Players (we are strictly amateur) have a play on.', 'Berg Valley Players'],
  ])('%j', (words, body) => expect(facts(`Dear Kit,\n\n${words} ${asked}\n\nThanks, Dana`).organisation).toBe(body));

  test.each([
    ['The Grand Lakeside Hotel has given us its ballroom.'],
    ['Desert Qawwali Utsav is happening here and we need you.'],
    ["Wombat Lane Primary's end of year concert is near, we hear."],
    ['Naomi Marsh Hale is my boss and we love films.'],
  ])('nobody: %j', (words) => expect(facts(`Dear Kit,\n\n${words} ${asked}\n\nThanks, Dana`).organisation).toBeUndefined());
});

describe('a line of a note or a form', () => {
  test.each([
    ['Prod co: Tin Pony Pictures', 'Tin Pony Pictures'],
    ['Requester: Office of Convocation, Lakehill Union University', 'Lakehill Union University'],
    ["Who's asking: Jolanda Ransley, lead shooter, Cinderfell Media", 'Cinderfell Media'],
  ])('%j', (line, body) => expect(facts(`${line}\n${asked}`).organisation).toBe(body));

  test.each([['Requester: Jolanda Ransley, Fargo'], ['Caller: Ines Okafor, 218-555-0162']])('nobody: %j', (line) =>
    expect(facts(`${line}\n${asked}`).organisation).toBeUndefined(),
  );
});
