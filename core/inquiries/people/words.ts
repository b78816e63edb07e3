/**
 * What names, organisations and job titles look like. Patterns are case-sensitive: capitals are what tells a name.
 */

import { foldName } from '../../places/fold.ts';
import { CAPITAL, LETTER } from '../letters.ts';
import { monthWord } from '../words.ts';
import { countryNamed } from '../places/countries.ts';
import { areaNamed } from '../places/names.ts';
import { isFarewellWord } from './farewells.ts';
import { FORM, isOfficeOrRank } from './ranks.ts';

export type PersonFact = { value: string; start: number; end: number };

const CAP = `[${CAPITAL}]`;
/** Little words within a name; "von Förde Events" is for whom somebody works. */
const WITHIN = String.raw`(?:(?!vo[nm]\s${CAP}[${LETTER}'-]+[^\S\n]${CAP})(?:van|von|de|du|dos|das|der|den|da|di|del|la|le|bin|al|el|ter|ten|af|av|zu|zum|ap|ab|Ó|Ní|Nic|Uí|Mac an|Nic an|Mac|[ds]/o|a/[lp]|bte?|bint[ei]?|ibn)\s){0,2}`;
/** One to four capitalised words, double names too, with particles between them. It stands in many patterns, so it is kept small. */
export const NAME = String.raw`(?:(?:Dr|Mr|Mrs|Ms|Prof|Rev|St|Supt|Sr|Fr)\.?\s(?:${CAP}\s)?)?(?:(?:(?:${CAP}|Wm|Geo|Thos|Chas|Jas|Jos|Ma)\.\s?){1,2}${WITHIN})?${CAP}[${LETTER}'-]{1,40}(?:\s${WITHIN}(?:[dlDL]')?${CAP}(?:\.(?=\s|$)|(?<![AI])(?=[,.!?)\n]|\s[/|]|$)|[${LETTER}'-]{1,40})){0,3}`;
const OF_BODY =
  /\s(?:(?:von|vom|van)\s(?:(?:der|dem|den|het|de)\s)?\p{Lu}[\p{L}'-]+[^\S\n]\p{Lu}|(?:von|vom|van|de|du|da|do|di|del|della)\s(?:la\s|l')?(?:Studios?|Estudios?|Agence|Agencia|Agenzia|Agentur|Agência|Compagnie|Compañía|Compagnia|Companhia|Collectif|Colectivo|Productora|Produtora|Club|Clube|Teatro|Théâtre|Theater|Grupo|Groupe|Gruppo|Fondation|Fundación|Fundação|Association|Asociación|Associazione|Fédération|Federación|École|Escuela|Mairie|Ayuntamiento|Universidad|Université|Museo|Musée|Instituto|Institut|Orquesta|Orchestre|Ensemble|Harmonie|Société|Bureau|Stichting|Verein|Casa|Radio|Festival|Cine|Ciné|Banda|Coro)\s).*$/u;
/** A written name without " von Förde Events", " de Studio Corail" behind it: for whom somebody works is no part of the name. */
export const withoutBody = (written: string): string => written.replace(OF_BODY, '');
/** Capitalised words with "of", "and" or "&" between them. */
export const ORG_NAME = String.raw`(?:the\s)?(?:${CAP}[${LETTER}\d'&.-]{0,30}|${CAP}&${CAP})(?:\s(?:(?:of|and|&|for|the|de|la|du|des|van|der|und|et|y|für)\s){0,2}(?:${CAP}[${LETTER}\d'&-]{0,30}|\d{2,4})){0,6}(?:\.\s(?:Ltd|Inc|Limited)(?![${LETTER}]))?`;

/** Words with capitals and the little ones of any language between them. */
export const CAPITALISED = String.raw`${CAP}[${LETTER}'&-]*(?:\s(?:(?:de|del|della|di|da|do|du|des|der|la|las|le|les|los|van|of|the|and|for|und|et|y|en|e|na|&)\s){0,2}(?:[dl]')?${CAP}[${LETTER}'&-]*){0,6}`;

const orgWords =
  'ltd llc llp inc gmbh ag sarl sas bv plc co company corp corporation group event events production productions agency media studio studios film films association society foundation institute university college school council chamber club league federation congress committee trust hospital clinic museum theatre theater church partners consulting solutions systems services hotel festival fest fair network union board ministry department dept marketing communications collective alliance centre center bank lab labs software foods bakery brewing brewery robotics guild cooperative co-op co-operative charity gallery library orchestra academy team rotary conference conferences wedding weddings works industries holdings international global brothers verein stiftung verband événements exhibitions meetings society fund projects gardens regatta video sports live kettles catering television tv radio polytechnic growers farms coop ensemble choir troupe players clinic parish diocese congregation bookshop roastery vineyard winery outfitters rentals realty creative pictures imaging broadcast av communications reporting circle school club institut instituto istituto agentur verlag kanzlei genossenschaft musikverein gesellschaft stiftung schule hochschule universität akademie theater vereinigung agence association cie compagnie société mairie mutuelle fédération théâtre école université asociación fundación estudio agencia escuela universidad ayuntamiento associazione fondazione agenzia scuola comune stichting vereniging bureau gemeente hogeschool winery lyceum gymnasium collegiate eisteddfod astronomers consortium photography chorale teatro museo orquesta orchestre orchester crewing staffing';
export const ORG_WORDS = new RegExp(
  String.raw`(?<![\p{L}'])(?:${orgWords.replaceAll(' ', '|')}|\p{L}{3,20}(?:kollektiv|verein|club|klub|freunde|gilde|verband|orchester|ensemble|kapelle|vereinigung|gesellschaft|genossenschaft|gemeinschaft|vereniging|förening(?:en)?|schützen)|[&+] (?:sons|söhne|fils|figli|hijos|zonen|daughters|töchter|filles|hijas|dochters)|and (?:sons|daughters))(?![\p{L}]|-\p{Ll})`,
  'iu',
);
/** Words that make a capitalised phrase an organisation wherever it stands. */
export const ORG_FOR_CERTAIN =
  /(?<![\p{L}'])(?:Ltd|LLC|LLP|Inc|GmbH|AG|PLC|Association|Society|Foundation|Institute|Guild|Alliance|Federation|Council|Chamber|League|Union|Trust|Corporation|Co|Company|Cooperative|Collective|Committee|Circle|Club|Orchestra|Choir|Academy|Verein|Fund)\.?$/u;
/** "School of Boatbuilding", "Association of Court Reporters" */
export const ORG_OF =
  /\b(?:Association|Society|School|Institute|College|University|Academy|Guild|Federation|Board|Department|Friends|Church|Museum) of (?:the )?\p{Lu}|\b(?:Association|Society|Institute|Trust|Foundation|Centre|Center|Campaign|Coalition|Alliance|Network|Council) for (?:the )?\p{Lu}|\b(?:Forum|Council|Commission|Coalition|Committee|Institute|Center|Centre|Network|Alliance) on (?:the )?\p{Lu}/u;
export const TITLE_WORDS =
  /\b(?:manager|mgr|mngr|asst|fundraiser|fund-raiser|director|conservator|temp|coordinator|co-ordinator|coördinator|producer|planner|assistant|officer|head of|lead|exec(?:utive)?|ceo|cfo|coo|cmo|founder|owner|president|secretary|chair(?:man|woman|person)?|specialist|consultant|associate|administrator|admin|organi[sz]er|editor|marketing|communications|comms|events team|curator|dean|professor|teacher|treasurer|(?<!(?:&|\+|and|und|et|en|y|e) )partner|he\/him|she\/her|they\/them|intern|vp|vice president|supervisor|principal|clerk|volunteer|programs?|coach|mother|father|bride|groom|pastor|deacon|minister|headteacher|head teacher|engineer|designer|captain|sergeant|mayor|conductor|sexton|registrar|warden|superintendent|sales|relations|hr|responsable|chargée? de|directrice|directeur|président|présidente|secrétaire|leiter|leiterin|leitung|geschäftsführer|geschäftsführerin|vorstand|vorsitzende|vorsitzender|obmann|obfrau|referentin|referent|assistenz|directora|gerente|encargad[oa]|presidenta|presidente|coordinadora?|coordinatore|coordinatrice|direttore|direttrice|segretari[oa]|hoofd|projectleider|voorzitter|penningmeester|secretaris|bestuur|operations|hon|sec|office|conven[eo]r|in-?charge|bursar|matron|lecturer|tutor|analyst|strategist|caretaker|paralegal|recruiter|facilitator|receptionist|publicist|dispatcher|scheduler|trainee|trustee|kapellmeister|keeper|rector|provost|librarian|archivist|realtor|arbiter|adjointe?|chief of staff|advis[eo]r|commodore|(?:vize)?bürgermeister(?:in)?|steward|verger|churchwarden|deputy|proprietor|vicar|chaplain|choirmaster|bandmaster|schatzmeister(?:in)?|schriftführer(?:in)?|prokurist(?:in)?|déléguée?|vedoucí|kierownik|dyrektor(?:ka)?|jednatel(?:ka)?|leerkracht|předseda|předsedkyně|prezes|ordförande|styreleder|rep|animat(?:eur|rice)|burgemeester|alcalde(?:sa)?|sindaco|rektor(?:in)?|dekan(?:in)?|headmaster|headmistress|postmaster|postmistress|quizmaster|boss|squire|bagman|(?:events?|jobs|front|crew|bookings?|news) desk)\b/i;
/** Words with a capital that begin no name. */
export const NOT_NAME =
  /^(?:main|reception|switchboard|uh|um|er|erm|typed|transcribed|free|north|south|east|west|first|second|third|ground|upper|lower|front|rear|town|village|cheerio|toodles?|im|groete|groetjes|atentamente|amitiés|amities|amicalement|gruss|grüsse|gruesse|servus|tschüss|hälsningar|hilsen|pozdrav|terveisin|bises|bisous|abrazo|abrazos|beijos|slán|hwyl|mahalo|shukran|namaste|shalom|salaam|baci|saluti|cordialmente|distinti|apologies|apology|hugs|blessings|bye|ciao|fingers|hopefully|peace|onwards|correction|update|urgent|thanks?|thank|many|cheers|best|kind|regards|warm|all|sent|hi|hello|hey|dear|yours|sincerely|with|looking|please|let|we|i|the|our|no|yes|ps|great|good|any|can|could|would|need|location|date|budget|venue|event|role|call|wrap|speak|talk|love|later|monday|tuesday|wednesday|thursday|friday|saturday|sunday|january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec|mon|tues?|wed|thu|thurs?|fri|sat|sun|noon|midnight|tomorrow|today|tonight|mit|viele|liebe|beste|cordialement|saludos|un|merci|gracias|grazie|tel|phone|mobile|office|email|from|to|subject|re|fwd?|ta|thx|xx?|xo|br|kr|groet|solidarity|text|ring|sms|lg|vg|mfg|gruß|groetjes|for|and|this|that|what|who|how|when|why|where|is|are|just|also|it|my|you|your|kit|interested|available|keen|dp|td|ad|pm|dop|yes|ok|okay|confirm|half|rate|pay|contact|camera|video|currently|happy|sorry|so|very|about|around|not|in|on|at|by|of|a|an|kindly|self|myself|departamento|abteilung|département|afdeling|faculty|fakultät|facultad|faculteit|lehrstuhl|oficina|gabinete|concejalía|secretaría|ayuntamiento|mairie|asociación|associazione|fundación|fondation|verein|verband|stiftung|stichting|brigadier|colonel|captain|commander|professor|reverend|councillor|inspector|lieutenant|commodore|bishop|senator|rabbi|herr|frau|doctor|soy|sono|je|ich|ik|moi|hier|ici|aquí|aqui|arohanui|slàinte|intern|caller|producer|yours|hope|cheers|reply|answer|groeten|salutations|meilleures|vielen|dank|freundliche|herzliche|quote|message|bitte|danke|bonjour|hallo|hola|buongiorno|liebe|lieber|sehr|guten|salut|beste|hoi|chers|chère|cher|be|been|come|get|right|over|out|voicemail|voice|message|missed|note|inquiry|enquiry|reminder|here|there|hmu|lmk|see|bring|pack|wrap|doors|photos?|stills|sound|audio|stream|livestream|edit|shoot|film|filming|two|three|one|both|each|every|short|long|back|again|photographer|videographer|herzlich|herzlichst|herzliche|nothing|something|someone|somebody|nobody|anybody|woman|man|lady|gentleman|anyone|everyone|everything|people|folks|guys|team|mate|love|gratefully|wearily|warmly|faithfully|sincerely|respectfully|fondly|ask|apply|send|write|meet|park|enter|use|rang|happy|merry|quick|big|new|mother's|luv|fella|besten|bester|herzlichen|freundlichen|lieben|schönen|vriendelijke|hartelijke|mum|mom|mam|dad|bride|groom|unknown|koha|gruess|grüessli|abraço|abraços|greetings|friendly|thks|tks|thnx|thanx|tnx|ha|haha|lol|parking|lunch|dinner|breakfast|food|drinks?|meals?|travel|accommodation|hotel|mileage|expenses|cash|fees?|terms|gear|tripod|dress|smart|black|access|father's|valentine's|(?:xo)+x?|hochachtungsvoll|vergelt's|alles|bussi|serdecznie|obrigad[oa]|tx|txt|asap|holler|go)$/i;

/** Two to six words with capitals and nothing else: what an organisation without a telling word looks like beside its writer's name. */
const CAPITALS =
  /^(?:the )?(?:(?:\p{Lu}\.){3,5}|\p{Lu}[\p{L}'&-]*)(?:\s(?:(?:de|du|des|di|del) \p{Ll}+ (?=d)|(?:\p{Ll}{1,3}|\p{Ll}'\p{Ll}{1,2}|from|para|pour|voor|over|into|with)\s|[&+]\s){0,2}(?:\p{Lu}[\p{L}'&.-]*|(?:\p{Ll}|dell)'\p{Lu}[\p{L}'-]*|e\.\s?V)){1,6}$/u;
/** "Local 88", "Lodge 14": which of many bodies of one name it is. */
export const NUMBERED_BODY =
  /,? (?:Local|Lodge|Troop|Branch|Post|Chapter|Pack|Squadron|Battalion|Company|Ward|Unit|Group|Court|Council|Division|Section|Camp|Grange|No\.?|Number|#) ?#?\d{1,5}$/u;
const STREET_WORDS = /(?<!\p{L})(?:street|st|avenue|ave|road|rd|lane|drive|square|court|place|highway|box)\.?$/iu;

/** True for a phrase that can be an organisation's name where one is expected. */
export const mayBeOrganisation = (words: string): boolean =>
  CAPITALS.test(words) &&
  words.length <= 60 &&
  !TITLE_WORDS.test(words) &&
  !/\s(?:in|at|near|on|by) \S+$/.test(words) &&
  !namesArea(/\s(?:en|em) (\p{Lu}\S+)$/u.exec(words)?.[1] ?? '') &&
  (words.includes('&') || !STREET_WORDS.test(words)) &&
  !namesArea(words);

/** "Asia Pacific", "EMEA", "UK & Ireland": for what part of the world somebody works. */
const WORLD_PART =
  /^(?:the )?(?:(?:north(?:ern)?|south(?:ern)?|east(?:ern)?|west(?:ern)?|central|latin|middle|southeast|south-east) )?(?:asia|europe|africa|americas?|east|oceania|australasia|scandinavia|nordics?|benelux|apac|emea|anz|dach|mena|uk|u\.k\.)(?:[ -](?:pacific|wide))?(?:,? (?:&|and) (?:ireland|africa|asia|europe|pacific|new zealand))?$/iu;
/** "Ontario", "North Dakota", "Germany" */
export const namesArea = (words: string): boolean => {
  const folded = foldName(words);
  return countryNamed(folded) !== undefined || areaNamed(folded, words) !== undefined || WORLD_PART.test(words);
};

export function trimmed(text: string, start: number): PersonFact {
  const value = text.trim();
  const lead = text.length - text.trimStart().length;
  return { value, start: start + lead, end: start + lead + value.length };
}

/** "I'm", "We've": a verb hangs on it. */
const HAS_VERB = /^(?:I|It|We|You|They|He|She|That|There|What|Who|Here|How)'\p{L}{1,2}$/iu;
/** VAT, GST, TBC: no name, whatever stands around it. */
/** "Boxing Day", "Book Week": an occasion. */
const OCCASION_NAME =
  /\s(?:Day|Week|Night|Eve|Weekend|Year|Season|Month|Festival|Show|Gala|Ball|Fair|Concert|Monday|Tuesday|Wednesday|Thursday|Friday|Saturday|Sunday)$/;
const INITIALISM =
  /^(?:VAT|GST|HST|PST|TBC|TBA|TBD|RSVP|ASAP|EOD|COB|AGM|PTA|CEO|AV|PA|USA|UK|US|EU|OK|FYI|PLS|LMK|HMU|TY|MN|WI|NY|CA|BC|AB|ON|NSW|QLD|VIC)(?:\s|$)/;

/** Who somebody is to somebody else. */
export const KIN_WORDS =
  'man|sister|brother|mother|father|mum|mom|mam|mama|mamma|maman|mutti|papa|oma|opa|dad|son|daughter|wife|missus|husband|partner|friend|mate|pal|cousin|aunt|auntie|aunty|uncle|niece|nephew|widow|gran|granny|nan|assistant|pa|ea|boss|client|colleague|neighbou?r|bridesmaid|fianc[ée]e?|girlfriend|boyfriend|flatmate|housemate|roommate|workmate|(?:sister|brother|mother|father)-in-law|kolleg(?:e|in)|freund(?:in)?|schwester|bruder|mutter|vater|tochter|sohn|nachbar(?:in)?|cousine|tante|onkel|amig[ao]|herman[ao]|prim[ao]|madre|padre|hij[ao]|copine|copain|sœur|frère|mère|père|fils|fille|amie?|collègue|vriendin|vriend|zus|broer|moeder|vader|collega';
/** "Jan Tregear", "June Abbott" */
const MONTH_NAMED = /^(?:(?:Jan|April|June|Bride) \p{Lu}\p{Ll}[\p{L}'-]+|Dez(?: \p{Lu}.*)?)$/u;

/** Degrees, orders and memberships after a name: "MRCVS", ", RN", "PhD", "MBE FRSA". */
export const LETTERS_AFTER =
  /(?<=\p{L}[\p{Ll}.] \p{Lu}[\p{L}'.-]*)(?:,?\s\(?(?:MBE|OBE|CBE|KBE|DBE|BEM|MVO|JP|DL|KC|QC|SC|RN|RGN|MD|PhD|Ph\.D\.?|DPhil|EdD|BA|BSc|BEd|BMus|MA|MSc|MEd|MPhil|MFA|MBA|LLB|LLM|CPA|CFA|mni|FCA|ACA|ACCA|CMP|PMP|DDS|DVM|PE|CEng|RIBA|FRIBA|Esq|[FMA]R[CISG][A-Z]{1,3}|FR[A-Z]{2})\.?\)?)+$/u;

/** "I. Drummond" */
const INITIAL = /^\p{Lu}\.\s?\p{Lu}/u;
/** "Sister of the bride speaking": who somebody is, and no name. */
const KIN_ALONE = new RegExp(String.raw`^(?:${KIN_WORDS})$`, 'iu');

/** "Levante Escena SL": a firm. */
const FIRM_BY_LAW =
  /\p{Ll}\)?,? (?:S\.?L|S\.?L\.?U|S\.?A\.?S|SARL|S\.?r\.?l|GmbH|AG|BV|B\.V|AB|Oy|P\/L|(?:Pty |Pte |Pvt )?Ltd|LLC|LLP|Inc|e\.? ?V)\.?$/u;

/** "I am Fr. Cyril's assistant": a form of address before a full stop. */
const RANK_ALONE = /^(?:Fr|Dr|Mr|Mrs|Ms|Rev|Revd|Prof|Cllr|Mdm|Supt|Insp)$/u;

/** A name, unless it begins with a word that begins none or is too long for one. */
export function nameFrom(written: string, start: number): PersonFact | undefined {
  const form = FORM.exec(written)?.[0].length ?? 0;
  const fact = trimmed(
    withoutBody(written)
      .slice(form)
      .replace(LETTERS_AFTER, '')
      .replace(/[.,!]+$|\s(?:ON|AT|BY|OR)$|(?<=\p{Ll})\s(?!I{2,3}$|IV$)\p{Lu}{2,3}$/gu, ''),
    start + form,
  );
  const first = fact.value.split(/\s/)[0] ?? '';
  if (
    fact.value.length < 2 ||
    fact.value.length > 50 ||
    ((NOT_NAME.test(first.replace(/[.,]/g, '')) || isFarewellWord(first)) && !MONTH_NAMED.test(fact.value) && !INITIAL.test(fact.value)) ||
    KIN_ALONE.test(fact.value) ||
    /^\p{Lu}{2}\p{Ll}*ing$|'s$|(?:'s|s') \p{L}/u.test(fact.value) ||
    HAS_VERB.test(first) ||
    FIRM_BY_LAW.test(written.trim()) ||
    INITIALISM.test(fact.value) ||
    isOfficeOrRank(fact.value) ||
    RANK_ALONE.test(fact.value) ||
    OCCASION_NAME.test(fact.value) ||
    (monthWord(first.toLowerCase()) !== undefined && !fact.value.includes(' ') && !MONTH_NAMED.test(fact.value))
  )
    return undefined;
  if (ORG_WORDS.test(fact.value) && /[ -]/.test(fact.value)) return undefined;
  return fact;
}
