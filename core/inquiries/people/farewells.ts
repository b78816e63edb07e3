/**
 * Words of farewell in the languages of those who write: they stand before a name and are none.
 */

const WORDS = new Set(
  [
    'thank thanks thanx thx regards wishes greetings sincerely faithfully respectfully cordially gratefully salutations blessings hugs cheers',
    'grüße grüsse gruesse gruß gruss grüßen grüssen grüßle grüessli grüezi gruess dank tschüss tschau bussi busserl herzlichst hochachtungsvoll befohlen',
    'groet groeten groetjes groetnis groete liefs kusjes knuffels doei bedankt dankie mvg',
    'cordialement salutations bises bisous bisou bise amitiés amicalement merci sincèrement respectueusement bientôt biz',
    'saludos saludo abrazo abrazos besos besitos beso gracias atentamente cordialmente salutacions petons abraçada adéu apertas aperta saúdos biquiños',
    'abraço abraços beijos beijinhos obrigado obrigada cumprimentos atenciosamente saluti saluto baci bacioni grazie abbraccio arrivederci',
    'pozdrawiam pozdrowienia serdecznie poważaniem pozdravem pozdravom pozdrav pozdravi pozdravy úctou üdvözlettel tisztelettel üdv lp',
    'hälsningar hälsning hilsen hilsener hilsner kram kramar klem klemmer terveisin terveiset kveðja kveðju mvh',
    'pagarbiai cieņu sveicieniem lugupidamisega tervitades stimă salutări saygılarımla sevgiler selamlar',
    'slán beannachtaí meas hwyl cofion diolch slàinte dùrachdan mihi arohanui vinaka mahalo enkosi ngiyabonga shukran namaste',
    'glückauf horrido waidmannsheil skål vänligen vennligst venligst kuss küsse küsschen knus kyss',
    'agur eskerrik musu musuak besarkada agurrak kasih dhanyavaad salamat hvala kiitos takk paldies ačiū aitäh děkuji ďakujem dziękuję köszönöm',
    "greets heartily hoogachtend fa'afetai faafetai sportivement vergelt's gott",
  ]
    .join(' ')
    .split(' '),
);
const WORD = /[\p{L}'’-]+/gu;
/** A farewell is told by one of its first words. */
const MOST_WORDS = 4;
/** "aus Kiel,", "from all of us -": so far a farewell goes on. */
const GOES_ON = /^(?: \p{Ll}{1,16}){1,8}(?:(?<= (?:from|aus|uit|de|da|fra|från|z|ze)) \p{Lu}[\p{L}-]{1,24})?(?=[,.!:;\n-]|$)/u;
const ENDS = /^[\s,.!:;*-]*/u;
/** "A+" for "à plus" */
const BY_SIGN = /^[AaÀà]\s?\+(?=[\s,!.]|$)[\s,!.]*/u;

/** Whether a word bids farewell and is nobody's name. */
export const isFarewellWord = (word: string): boolean => WORDS.has(word.toLowerCase().replace(/[.,!]+$/, ''));

/** How long the farewell is that the words begin with, with the marks behind it; 0 for none. */
export function farewellAt(words: string): number {
  const sign = BY_SIGN.exec(words)?.[0].length;
  if (sign) return sign;
  let count = 0;
  let at = 0;
  for (const { 0: word, index } of words.matchAll(WORD)) {
    // Nothing but words and blanks stands within a farewell.
    if (++count > MOST_WORDS || /\S/.test(words.slice(at, index))) return 0;
    at = index + word.length;
    if (!isFarewellWord(word)) continue;
    // "Cordiali saluti", "Besos y abrazos"
    const more = /^ (?:(?:und|and|et|y|e|en|a|&) )?[\p{L}'’]+/u.exec(words.slice(at))?.[0];
    if (more && isFarewellWord(more.split(' ').at(-1) ?? '')) at += more.length;
    at += GOES_ON.exec(words.slice(at))?.[0].length ?? 0;
    return at + (ENDS.exec(words.slice(at))?.[0].length ?? 0);
  }
  return 0;
}

/** A line that is a farewell and nothing else, of a few words in any order: "With friendly greetings from Hessen". */
export const onlyBids = (line: string): boolean => {
  const words = line.trim();
  if (words.length > 50 || /[\d@:?/|]/.test(words)) return false;
  return words !== '' && farewellAt(words) === words.length;
};
