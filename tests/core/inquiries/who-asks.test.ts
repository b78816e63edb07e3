/**
 * Who asks and for whom, as different people sign, greet and introduce themselves; what only looks like a name is none.
 */
import { describe, expect, test } from 'vitest';
import { clean } from '../../../core/inquiries/parts/clean.ts';
import { only, split } from '../../../core/inquiries/parts/split.ts';
import { peopleIn } from '../../../core/inquiries/people/find.ts';
import { knownTown } from '../../../core/inquiries/places/home.ts';
import { placesNamed } from '../../../core/places/search.ts';
import { gazetteer, homeOf } from './reading.ts';

const home = homeOf('leeds');

function people(written: string): { name: string | undefined; organisation: string | undefined } {
  const { text } = clean(written);
  const parts = split(text);
  const found = peopleIn(
    {
      body: only(text, parts, 'own', 'forwarded', 'subject'),
      signature: only(text, parts, 'signature'),
      header: only(text, parts, 'header'),
      stamp: only(text, parts, 'stamp'),
    },
    (name) => placesNamed(gazetteer, name).some((place) => knownTown(place, home)),
  );
  return { name: found.name?.value, organisation: found.organisation?.value };
}

describe('name', () => {
  test.each([
    ['Priya Menon', 'Hi Kit, we need you on 5 May in Leeds to film. £300. Let me know by Friday. Cheers, Priya Menon'],
    ['priya', 'hi kit, priya here from the dance school, can u film our show on 5 may'],
    ['Gareth', 'Alright Kit, Gareth from the rugby club. Can you film us on Saturday 5 May?'],
    ['Ingrid Solberg', 'Dear Kit, my name is Ingrid Solberg and I manage the choir. Could you record us on 5 May?'],
    ['Tom', "Kit, it's Tom. You free on 5 May to film?"],
    ['tom', 'can you film 5 may in leeds 10am to 4pm 300 flat. tom'],
    ['Mary-Kate', 'Hi Kit, camera op needed on 5 May. Call me. Mary-Kate'],
    ['Hasan Ali', 'Film our launch on 5 May? Many thanks in advance\nHasan Ali'],
    ['Hasan Ali', 'Film our launch on 5 May? With thanks and good wishes,\n\nHasan Ali\nChair'],
    ['Bea Lindqvist', 'Need a videographer on 5 May. Contact: Bea Lindqvist (bea@x.example)'],
    ['Bea Lindqvist', 'Need a videographer on 5 May.\nContact name: Bea Lindqvist\nTel: 01632 960001'],
    ['Bea Lindqvist', 'Videographer, 5 May in Leeds. Apply to Bea Lindqvist on 01632 960001.'],
    ['Joanna', 'Voicemail: hello Kit, this is Joanna at the library, we wondered if you could film on 5 May. Bye.'],
    ['Rob Tanaka', 'Could you film on 5 May? Best to reach me by text. Rob Tanaka / 555-0123-444'],
    ['Rob Tanaka', 'Rob Tanaka here. Filming on 5 May, interested?'],
    ['Sunita', 'Respected sir, myself Sunita, I am from the college committee. Kindly film our fest on 5 May.'],
    ['Sunita Rao', 'Respected sir, kindly film our fest on 5 May. Thanking you, Yours faithfully, Sunita Rao'],
    ['Sunita Rao', 'Kindly film our fest on 5 May. Regards Sunita Rao'],
    ['Matteo', 'Ciao Kit, sono Matteo. Puoi filmare il 5 maggio?'],
    ['Élodie', "Bonjour Kit, c'est Élodie de la compagnie. Peux-tu filmer le 5 mai ?"],
    ['Jonas Feld', 'Hallo Kit, kannst du am 5. Mai filmen? Liebe Grüße, Jonas Feld'],
    ['Jonas Feld', 'Hallo Kit, kannst du am 5. Mai filmen? Beste Grüße aus Kiel\nJonas Feld'],
    ['Nia', 'Hiya, Nia again. Could you film on 5 May too?'],
    ['Nia Bowen', 'Could you film on 5 May?\n\nNia Bowen\nBowen & Hart Events\n07700 900111'],
    ['Nia Bowen', 'Could you film on 5 May? Hope to hear from you soon - Nia Bowen'],
    ['Nia Bowen', 'Could you film on 5 May? Hope to hear from you soon! Nia Bowen (Mrs)'],
    ['NIA BOWEN', 'Could you film on 5 May? NIA BOWEN'],
    ['Dr Anil Kapse', 'Could you film on 5 May? Dr Anil Kapse, Dean'],
    ['wes', 'wes from the brewery. u free 5 may to film?'],
    ['wes', 'yo its wes, u free 5 may to film?'],
    ['wes', 'u free 5 may to film a gig in leeds? 200 cash. cheers wes'],
    ['wes', 'u free 5 may to film a gig in leeds? 200 cash - wes'],
    [undefined, 'Could you film on 5 May? See you in Leeds.'],
    [undefined, 'Could you film on 5 May? The venue is in Ripon, North Yorkshire.'],
    [undefined, 'Could you film on 5 May? Ask for Stage Door.'],
    [undefined, 'Could you film our show Cinderella on 5 May?'],
    [undefined, "Could you film on 5 May, it's Mother's Day. Rate £300."],
    [undefined, 'Could you film on 5 May? Please, pretty please.'],
    [undefined, 'Can you film 5 may? free food, beer'],
    [undefined, 'Can you film the Harlow Jazz Festival on 5 May? Looking forward to hearing from you.'],
    [undefined, "Film on 5 May? It's Easter Monday, so no trains."],
    [undefined, 'Could you film on 5 May? Our director, Paul, meets you at the door.'],
    [undefined, 'Could you film on 5 May? We do not have parking, sadly. Budget: £300, all in.'],
    [undefined, 'kit can u film 5 may? deal?'],
    [undefined, "Film 5 May? It's Beethoven this year. Two hours."],
    [undefined, 'Call is at 7. Film on 5 May in Leeds please. 300 flat. ok?'],
    ['Fern', "Hi, it's Fern's mum. No, joking, it's Fern. Could you film on 5 May?"],
    ['Alasdair Munro', 'Good evening. Alasdair Munro, Strathspey Fiddle Club. Could you film us on 5 May?'],
    ['Oyelaran', 'Please I am Oyelaran from Lagos. We want you to film on 5 May.'],
    ['Ola Bright', "Hello, Ola Bright speaking. We'd like you to film on 5 May."],
    ['Ola Bright', 'Message taken for Kit. Caller: Ola Bright. Wants filming on 5 May.'],
    ['Ola Bright', 'Rang: Ola Bright, 01632 960444. Wants you to film on 5 May.'],
    ['Ola Bright', 'Your contact on the day and for replies is Ola Bright, ola@bright.example. Film on 5 May.'],
    ['Tess', 'Film 5 May? Luv Tess xx'],
    ['Tess', 'Film 5 May? Big hugs, Tess'],
    ['Tess', 'Film 5 May? Sent in haste, Tess'],
    ['Tess Orme', 'Film 5 May? I look forward to your reply.\nTess Orme, Hon. Treasurer'],
  ])('%s: %s', (name, text) => expect(people(text).name).toBe(name));
});

describe('organisation', () => {
  test.each([
    ['Wharfedale Harriers', 'Dear Kit, I coordinate events for the Wharfedale Harriers and we need a videographer on 5 May. Jo'],
    ['Ribble Valley Quilters', "Hello Kit, I'm writing from the Ribble Valley Quilters. Could you film us on 5 May? Jo"],
    ['Moorside Grammar School', 'Good morning, I teach drama at Moorside Grammar School in Skipton. Could you film our play on 5 May? Jo'],
    ['Moorside Grammar School', 'Film our play on 5 May? Kind regards, Jo Hart, Head of Drama, Moorside Grammar School'],
    ['Bluebell Textiles', 'Film our launch on 5 May? Thanks\nJo Hart\nMarketing Manager\nBluebell Textiles'],
    ['Bluebell & Finch', 'Film our launch on 5 May?\n\nJo Hart\nBluebell & Finch\n07700 900222'],
    ['Bluebell & Finch', 'Film our launch on 5 May? Jo Hart (Bluebell & Finch)'],
    ['Tarn Productions', 'Jo from Tarn Productions here. Camera op on 5 May?'],
    ['Tarn Productions', 'Hi Kit, Jo at Tarn Productions. Camera op on 5 May?'],
    ['Tarn Productions', 'Camera op on 5 May? - Jo, Tarn Productions'],
    ['Eskdale Bell Ringers', 'The Eskdale Bell Ringers are looking for somebody to film their centenary on 5 May. Jo'],
    ['Holme Moss Brass Band', 'We, the Holme Moss Brass Band, would like our concert filmed on 5 May. Jo Hart'],
    ['Holme Moss Brass Band', 'On behalf of the Holme Moss Brass Band, could I book you to film on 5 May? Jo Hart'],
    ['Airedale Housing Trust', 'Client: Airedale Housing Trust\nDate: 5 May\nRole: camera'],
    ['Airedale Housing Trust', 'I am the communications officer for Airedale Housing Trust. Film on 5 May? Jo'],
    ['Airedale Housing Trust', 'I work with Airedale Housing Trust and we need filming on 5 May. Jo'],
    ['Lantern & Loom', 'Lantern & Loom needs a camera op on 5 May. Jo'],
    [
      'Sunrise International School',
      'Respected sir, greetings from Sunrise International School. Kindly film annual day on 5 May. Principal',
    ],
    ['Sunrise International School', 'We at Sunrise International School are celebrating annual day on 5 May, need filming'],
    ['Verein der Köche', 'Hallo, ich bin Jo vom Verein der Köche. Können Sie am 5 May filmen?'],
    [undefined, 'Jo Hart needs a camera op on 5 May. Ring her.'],
    [undefined, "I'm working with Ann Lee on a film. Camera on 5 May?"],
    [undefined, 'We need you at Moor Park on 5 May to film. Jo'],
    [undefined, 'Film the Harlow Jazz Festival on 5 May? Jo Hart'],
    [undefined, 'Film our gala at the Grand Hotel on 5 May? Jo Hart'],
    [undefined, 'I run into Bob Dale from time to time, he gave me your name. Film on 5 May? Jo'],
    [undefined, "We are Ann and Bob and we're getting married on 5 May. Film us?"],
    [undefined, 'The Town Hall has a side door. Film on 5 May? Jo'],
    [undefined, "Film our fair on 5 May at St Mary's Church? Jo Hart"],
    [undefined, 'Jo Hart, Otley. Film on 5 May?'],
    [undefined, 'Film on 5 May? Thanks, Jo Hart, Otley'],
    [undefined, 'Film on 5 May? Thanks, Jo Hart, mother of the bride'],
    ['Larkspur Dance Academy', 'I run Larkspur Dance Academy and want our show filmed on 5 May. Jo'],
    ['Larkspur Dance Academy', 'Larkspur Dance Academy show, 5 May. Film it? Jo Hart, Larkspur Dance Academy'],
    ['Nidd Valley Beekeepers', "My name's Jo and I'm with the Nidd Valley Beekeepers. Film on 5 May?"],
    ['Nidd Valley Beekeepers', "It's Jo from Nidd Valley Beekeepers. Film on 5 May?"],
    ['Nidd Valley Beekeepers', "I'm the treasurer of the Nidd Valley Beekeepers. Film on 5 May? Jo"],
    ['Nidd Valley Beekeepers', 'My society, the Nidd Valley Beekeepers, meets on 5 May and wants filming. Jo'],
    ['Nidd Valley Beekeepers', 'Film on 5 May? Yours, Jo Hart (Hon. Sec., Nidd Valley Beekeepers)'],
  ])('%s: %s', (organisation, text) => expect(people(text).organisation).toBe(organisation));
});
