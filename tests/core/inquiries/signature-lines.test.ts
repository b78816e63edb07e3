/**
 * The lines below a name: offices in small letters, strokes between house and number, legal forms of many countries, houses known by the address.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2027-04-12T09:12:00+01:00[Europe/London]', 'leeds');
const asked = 'Could you film our concert in Leeds on Friday 14 May 2027? We can pay 250 euros.';

describe('who signs and for whom', () => {
  test.each([
    ['Regards,\nCortland Beyers\nTD, Slateback Show Services\n719-555-0111', 'Cortland Beyers', 'Slateback Show Services'],
    [
      'Groet,\nFloor Asse\nCrewplanning | Kanaal Negen Producties | 020 555 0186 | crew@kanaal.example',
      'Floor Asse',
      'Kanaal Negen Producties',
    ],
    ['Groeten,\nLieven Daele\nvoorzitter Koninklijke Harmonie De Meerlaan vzw', 'Lieven Daele', 'Koninklijke Harmonie De Meerlaan vzw'],
    ['Cheers\nRoel Esch\nbestuur Stichting Dagdieven', 'Roel Esch', 'Stichting Dagdieven'],
    ['Groetjes,\nTjitske Hoek, co-founder Zwamhelm\ntjitske@zwamhelm.example', 'Tjitske Hoek', 'Zwamhelm'],
    ['Groet,\nIneke Dorren\nleerkracht groep 8, basisschool De Zilvermees', 'Ineke Dorren', 'basisschool De Zilvermees'],
    ['Ciao\nGiulia Ferri\nOttobarra srl - Torino', 'Giulia Ferri', 'Ottobarra srl'],
    ['Regards\nIng. Zuzana Hrn\nÚstav vodných prác, n. o.', 'Zuzana Hrn', 'Ústav vodných prác, n. o.'],
    ['Grüße\nDr. Katharina Wolk\nGeschäftsführerin\nwolkundrabe Filmproduktion GmbH', 'Katharina Wolk', 'wolkundrabe Filmproduktion GmbH'],
    ['Lep pozdrav\nMatjaž Kobal\nŠahovska zveza Raven Trg\nm@raventrg.example', 'Matjaž Kobal', 'Šahovska zveza Raven Trg'],
    ['Meilleures salutations\nGaëtan Voir, pour la Jeunesse de la Tour', 'Gaëtan Voir', 'Jeunesse de la Tour'],
    [
      'Cordialement,\nApolline Rav\nChargée de communication\nISERON ÉNERGIES SA au capital de 2 450 000 €',
      'Apolline Rav',
      'ISERON ÉNERGIES SA',
    ],
    ["Cordialement,\nAnne Guérin\nSCOP Les Images d'à Côté\n02 61 91 30 77", 'Anne Guérin', "SCOP Les Images d'à Côté"],
    [
      'Yours faithfully\nDipl.-Kfm. Gernot Schall\nProkurist\nSchall + Partner Kommunikation OG',
      'Gernot Schall',
      'Schall + Partner Kommunikation OG',
    ],
    ['Thank you for him and for me,\nLudivine, accueil\nTransports Schmitt & Cie\n03 53 01 44 09', 'Ludivine', 'Transports Schmitt & Cie'],
    ['Merle Hauk\nPublic Info, 218-555-0186', 'Merle Hauk', undefined],
    ['Regards,\nYasmin Trel\nPeople & Culture\n0491 570 006', 'Yasmin Trel', undefined],
  ])('%j', (foot, name, organisation) => {
    const { contactName, organisation: body } = read(`Hello,\n\n${asked}\n\n${foot}`);
    expect([contactName, body]).toEqual([name, organisation]);
  });
});

describe('where a signature begins', () => {
  test.each([
    ['Cormac Dunphy\ndirector / set / tea', 'Cormac Dunphy'],
    ['Aoife Brann, 5th class rep', 'Aoife Brann'],
    ['Solange Vauq\nDéléguée générale\nFédération des Lavoirs Vivants (association loi 1901)\n04 65 71 20 08', 'Solange Vauq'],
    ['Menga Cadr\nPräsidentin ... (no, mixed since 2019!) der Sache\n079 555 01 61', 'Menga Cadr'],
    ['Thanks so much\nMadame Odile Cormier', 'Odile Cormier'],
    ['Deine Ruth vom Ensemble Kohlrabi', 'Ruth'],
    ['Greetings\nIA Konstantin Vrub', 'Konstantin Vrub'],
    ['Two cameras\nno sound / no light', undefined],
  ])('%j', (foot, name) => expect(read(`Hello,\n\n${asked}\n\n${foot}`).contactName).toBe(name));

  test('a reference line behind a salutation begins no other mail', () => {
    const { contactName, contactPhone } = read(
      `Dear Sir or Madam:\n\nSubject: record of the spring meet.\n\n${asked}\n\nRespectfully,\nWalter J. Ost, P.E. (ret.)\n218-555-0143`,
    );
    expect([contactName, contactPhone]).toEqual(['Walter J. Ost', '218-555-0143']);
  });
});
