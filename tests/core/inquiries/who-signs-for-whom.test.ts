/**
 * Names, houses and parts of houses below a message; who speaks in a row of messages. Sentences of common practice.
 */
import { expect, test } from 'vitest';
import { facts } from './reading.ts';

test.each([
  [
    'Could you film our townhall in York on 12 December? Thanks. Mei Lin, Corporate Affairs, Harbourline Freight Pte Ltd',
    { contactName: 'Mei Lin', organisation: 'Harbourline Freight Pte Ltd' },
  ],
  ['This is Col. Harbhajan Dutt (Retd). Please film our tournament in York on 12 December.', { contactName: 'Harbhajan Dutt' }],
  ['This is Mrs Whitwam. Please film our tournament in York on 12 December.', { contactName: 'Mrs Whitwam' }],
  [
    'Please film our gala in York on 12 December.\n\nRosa Quill, PC\nSeven Elms Multicam\nrosa@sevenelms.example',
    { contactName: 'Rosa Quill', organisation: 'Seven Elms Multicam' },
  ],
  [
    'Hey Kit, Tanzkollektiv Nebelhorn here. Please film our show in York on 12 December. Kuss, Jolanda',
    { contactName: 'Jolanda', organisation: 'Tanzkollektiv Nebelhorn' },
  ],
  [
    'Please film our fair in York on 12 December.\n\nOdalys Brennick\nExport Dept\nFinchwater Tools\nexport@finchwatertools.example',
    { contactName: 'Odalys Brennick', organisation: 'Finchwater Tools' },
  ],
  ['We need video in Leeds on 12 December, 4.30am.\n\nAuntie Abena Ofori\n+44 7700 900318', { contactName: 'Abena Ofori' }],
  ['Good morning sir, Deaconess Ronke Adeola here. Please video our party in Leeds on 12 December.', { contactName: 'Ronke Adeola' }],
  [
    'Could you film our dinner in Duluth on December 12?\n\nVery truly yours,\nNell Achter\nOffice Manager\nBlom, Roe & Tarn LLP\nT 218-555-0107\nF 218-555-0108',
    { contactName: 'Nell Achter', organisation: 'Blom, Roe & Tarn LLP', contactPhone: '218-555-0107' },
  ],
  [
    'Could you film our show in Duluth on 12 December?\n\nMoira Tuck\nStudio: 218 555 0110 (answerphone, nobody listens)\nMobile, use this one: 218 555 0162',
    { contactPhone: '218 555 0162' },
  ],
  [
    'Could you film our summit in Duluth on 12 December?\n\nPia Wick\nManager, Meetings\n218.555.0184 ext. 22',
    { contactPhone: '218.555.0184 ext. 22' },
  ],
  ['Please film our week in Potsdam on 12 December.\n\nGlückauf\nHeide Rothbach\nNeißeguss GmbH', { contactName: 'Heide Rothbach' }],
  [
    'Devon: hey got a sec\nDevon: awards night, Sat Dec 12, Duluth, camera op\nMe: pay?\nDevon: 600 all in, call 4pm',
    { contactName: 'Devon' },
  ],
  [
    'Tasha Brand — 9:38 AM\nhi! are you around on December 12? we need our concert in Duluth filmed\nYou — 9:39 AM\ndepends!\nTasha Brand — 9:40 AM\ncall 4pm, 600',
    { contactName: 'Tasha Brand' },
  ],
  ['Hi, this is Esme in scheduling at Brass Lantern Pictures. Need a camera operator on 12 December in Duluth.', { contactName: 'Esme' }],
  [
    'Camera wanted in Duluth on 12 December, call 2pm.\nResp by 3 December 5pm to: Gil Loxley, 218-555-0106, gil@saltwrack.example',
    { contactName: 'Gil Loxley' },
  ],
  [
    'We need videography of our annual function on 12 December.\n\nPrincipal\nDr. (Mrs.) Manpreet Kaur Sethi\nNav Kiran Memorial School',
    { contactName: 'Manpreet Kaur Sethi', organisation: 'Nav Kiran Memorial School' },
  ],
  [
    'Could you film our reading on 12 December at 7pm?\n\nWarm regards,\nOrla Mac an Ghoill\norla@riverfolk.example',
    { contactName: 'Orla Mac an Ghoill' },
  ],
])('%s', (text, wanted) => expect(facts(text)).toMatchObject(wanted));

test.each([
  "Hello, it's the assistant of Mme Delacroy. Please record a round table in Reims on 12 December, 9h. 380 euros.",
  'I work in the ceremonies office. Please film in Leeds on 12 December. Ceremonies end by 4.\n\nEilidh Carne\ne.carne@ceremonies.example',
])('no house is stated: %s', (text) => expect(facts(text).organisation).toBeUndefined());

test('a form with labels has no speaker', () =>
  expect(facts('What: camera for our gala\nWhen: 12 December, 4pm call\nWhere: Duluth\nPay: 600').contactName).toBeUndefined());
