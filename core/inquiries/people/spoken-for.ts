/**
 * For whom somebody speaks, in few words of any language: "desde el Conservatorio Ría Alta", "namens Stichting Waterlinie", "our netball league (Calder Netball)".
 */
import { OCCASION } from '../occasions.ts';
import { isSoleBody } from './bodies.ts';
import { isPerson, NO_ORG, TWO } from './organisation.ts';
import { isToldOf } from './own-body.ts';
import { CAPITALISED, mayBeOrganisation, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

const ARTICLES = String.raw`(?:(?:the|el|la|los|las|il|lo|le|les|der|des|die|das|dem|de|het|den|del|dello|della|du|da|do)\s|l'|dell'|d')`;
/** What a body is, in small letters. */
export const KIND = String.raw`(?:association|asociación|associazione|associação|compagnie|compañía|compagnia|troupe|chorale|coro|chœur|produtora|productora|agence|agencia|agenzia|basisschool|vereniging|stichting|fanfare|club|clubs?|society|choir|band|orchestra|ensemble|charity|ngo|non-?profit|firm|company|studio|outfit|agency|league|troupe|theatre|theater|museum|gallery|school|college|hospice|start-?up|brewery|bakery|collective|network|team|group|foundation|trust|estate agents'?|orchard|farm|co-?op|cooperative|practice|business|shop|parish|church|congregation|winery|vineyard|nursery|kindergarten|coral|banda|peña|cofradía|amicale|harmonie|\p{Ll}{2,16}vereniging|\p{Ll}{2,12}koor|(?:[\p{L}-]{2,20})?(?:[Vv]erein|[Kk]lub|[Cc]hor|[Ff]irma|[Bb]eratung|[Kk]anzlei|[Pp]raxis))`;

const PATTERNS = [
  // Whose words they are.
  String.raw`(?:[Dd]esde|(?:[Ee]n nombre|[Dd]e parte|[Ee]m nome|[Dd]e la part|[Aa]u nom|[Pp]our le compte) d(?:el?|u|es|[ao]s?|(?='))|[Nn]amens(?: (?:het|de) (?:bestuur|team|organisatie|directie|comité) van)?|[Ii](?:'ve| have)? (?:just |recently |now )?(?:started (?:at|with)|joined|work (?:at|for))|[Ii]m (?:Namen|Auftrag)|[Pp]er conto di|[Aa] nome di|[Ss]iamo|[Ss]omos|[Nn]ous sommes|[Ww]ir sind|[Ww]ij zijn|(?:segretari[ao]|secretari[ao]|secrétaire|presidente?|présidente?|voorzitter|prensa|presse) (?=d)|[Oo]n behalf of|(?:secretary|treasurer|chair|chairman|chairwoman|president|convenor)(?: \([^()]{2,40}\))? of|[Ww]e (?:run|organi[sz]e)|and help(?:ed)? (?:to )?(?:run|organi[sz]e)|on the (?:board|committee|council|organi[sz]ing committee)(?: of (?:trustees|directors))? of|[Ii] (?:chair|administer|run|head|own|founded|represent|coach|captain|manage|coordinate|co-ordinate|organi[sz]e|direct|(?:help|helped) (?:to )?(?:run|organi[sz]e)|look after)|(?:[Hh]ere|[Aa]ll of us|[Uu]s) at|[Ii](?:'m| am) with)\s?${ARTICLES}{0,2}(?:${KIND}\s)?(${CAPITALISED})`,
  // "I'm organizing the Torrance Orchid Circle's winter show"
  String.raw`(?:[Ii](?:'m| am)|[Ww]e(?:'re| are)) (?:organi[sz]ing|arranging|planning|running|coordinating|in charge of) (?:the )?(${CAPITALISED}(?<='s))(?= \p{Ll})`,
  // "de la compagnie Pied de Nez", "the rowing club Traunblick"
  String.raw`(?:${ARTICLES}|van |[Oo]ur (?!old |former |last |previous |own ))(?:[\p{Ll}-]+ )?${KIND}\s(?:called |named |d[e']\s?\p{Ll}+ )?(${CAPITALISED})`,
  // "my studio's Peat & Petal"
  String.raw`(?:[Mm]y|[Oo]ur) (?:[\p{Ll}-]+ ){0,2}${KIND}(?:'s| is)(?: called| named)? (?:the |The )?(${CAPITALISED})`,
  // "We are Ripon Strollers, a walking group", "we're called Ripon Strollers", "I trade as Whitlow Films"
  String.raw`[Ww]e(?:'re| are) (?:the |The )?(${CAPITALISED})(?=, an? (?:[\p{Ll}-]+ ){0,4}${KIND}(?!\p{L}))`,
  String.raw`(?:[Ww]e(?:'re| are) called|(?:[Ii]|[Ww]e) (?:trade|operate) as|(?:[Mm]y|[Oo]ur) employers?,) (?:the |The )?(${CAPITALISED})`,
  // "a small bakery called Rye & Shine"
  String.raw`(?:${KIND}|[Bb]and|[Cc]ompany|[Cc]harity) (?:called|named) (?:the |The )?(${CAPITALISED})`,
  // "our netball league (Calder Netball)", "our robotics team, Bolt Otters,"
  String.raw`(?:[Oo]ur|[Mm]y|[Aa]n?|[Tt]he|[Nn]otre|[Nn]uestr[ao]|[Uu]nser\p{L}{0,2}|[Ee]in(?:er|em|e)?|[Oo]nze) (?:[\p{Ll}\p{N}-]+ ){0,4}${KIND}(?:(?: [\p{L}'-]+){0,7} \((?:[^(),]{2,30}, ){0,2}|, )${ARTICLES}?(${CAPITALISED}(?: e\.\s?V\.| \d{4})?)(?=[,).])`,
  // "das Kammerensemble Seeblick", "der Wohngenossenschaft Ahornweg"
  String.raw`(?:[Dd]er|[Dd]ie|[Dd]as|[Dd]em|[Dd]es|[Bb]eim|[Vv]om|[Uu]nser\p{L}{0,2}) (\p{Lu}\p{Ll}{2,16}(?:verein|klub|schule|museum|gymnasium|bühne|musik|verband|chor|ensemble|orchester|genossenschaft|gesellschaft|stiftung|kantorei|akademie|bund|komitee|werk)(?: \p{Lu}[\p{L}-]+){1,3})`,
].map((pattern) => new RegExp(String.raw`(?<!\p{L})${pattern}`, 'gu'));

/** What stands behind an adjective is a part of a house, and the adjective no name of it. */
const PART_BEHIND =
  /^ (?:\p{Ll}+ )?(?:office|arm|branch|team|division|wing|side|chapter|subsidiary|unit|desk|department|section|end|part|operation|business|region|sister)s?(?!\p{L})/u;

/** Who holds or heads it. */
const RUNS =
  /^(?:(?:I|We|we|And|and) (?:help(?:ed)? (?:to )?)?(?:chair|run|head|manage|coordinate|co-ordinate|organi[sz]e)|(?:secretary|treasurer|chair|chairman|chairwoman|president|convenor)|on the (?:board|committee)) /u;
/** "from the Ballarat squash club", "treasurer of the bendigo junior calisthenics club": a town's, in small letters. */
const OF_TOWN =
  /(?<!\p{L})(?:from|of|at|for|with) the (\p{L}[\p{Ll}'-]{2,16}(?: \p{Ll}{3,14}){0,3} (?:club|society|choir|association|league|guild|orchestra|band|school|council|troupe))(?!\p{L})(?! (?:hall|room|night|dinner|final|show|house|concert)s?(?!\p{L}))/gu;
/** "I'm the honorary curator of the Wimmera Tractor Shed Friends" */
const OFFICE_OF = new RegExp(
  String.raw`(?<!\p{L})(?:[Ii](?:'m| am| act| serve| work| write)|[Ww]e(?:'re| are))(?: as)? (?:(?:the|an?|its|their) )?((?:[\p{L}.'-]+,? ){1,8}?)(?:of|for|at|within) (?:the )?(?<body>${CAPITALISED})`,
  'gu',
);
/** "For Greenfield Model School" on a line of its own at the end. */
const FOR_LINE = new RegExp(String.raw`\n[^\S\n]*[Ff]or (?:and on behalf of )?(?:the )?(${CAPITALISED})[.,]?[^\S\n]*(?=\n|$)`, 'gu');
/** " clog dancers", " bell ringers" */
const PEOPLE =
  /^(?: \p{Ll}[\p{Ll}-]{1,14}){0,2} (?:dancers|singers|players|runners|riders|walkers|ringers|cyclists|rowers|swimmers|archers|bowlers|quilters|knitters|growers|farmers|anglers|divers|fiddlers|drummers|pipers|climbers|wheelers|rangers|scouts|guides|bellringers)(?!\p{L})/u;
const PEOPLE_REACH = 60;
/** Who they are is said at the beginning. */
const REACH = 2000;

/** The body of which a text is written, in whose name or as a name beside what it is. */
export function spokenFor(body: string, isTown: (name: string) => boolean): PersonFact | undefined {
  for (const pattern of PATTERNS)
    for (const found of body.slice(0, REACH).matchAll(pattern)) {
      const value = (found[1] ?? '').replace(/'s?$/, '');
      const known = ORG_WORDS.test(value);
      const last = value.split(' ').at(-1) ?? '';
      if (
        value.length < 4 ||
        isTown(value) ||
        isToldOf(body, found.index) ||
        NO_ORG.test(value) ||
        (/behalf/i.test(found[0]) && isPerson(value, '')) ||
        (TWO.test(value) && !known && !/ (?:called|named) /.test(found[0]))
      )
        continue;
      if (!known && !mayBeOrganisation(value.replace(/ \d{4}$/, '')) && !isSoleBody(value)) continue;
      // "the European office of a university"
      if (!known && !value.includes(' ') && PART_BEHIND.test(body.slice(found.index + found[0].length))) continue;
      // "We run the Goldfields Banjo Muster": who holds it every year is called so.
      const runs = RUNS.test(found[0]) && value.split(' ').length > 2;
      if (/^meetings?$/i.test(last) || (OCCASION.test(last) && !ORG_WORDS.test(last) && !runs)) continue;
      const start = found.index + found[0].lastIndexOf(found[1] ?? '');
      // "treasurer of the Airedale clog dancers": one word and its people.
      const more = value.includes(' ')
        ? ''
        : (PEOPLE.exec(body.slice(start + value.length, start + value.length + PEOPLE_REACH))?.[0] ?? '');
      return { value: value + more, start, end: start + value.length + more.length };
    }
  for (const found of body.slice(0, REACH).matchAll(OFFICE_OF)) {
    const value = found.groups?.['body'] ?? '';
    if (!TITLE_WORDS.test(found[1] ?? '') || !mayBeOrganisation(value) || isTown(value) || NO_ORG.test(value) || isPerson(value, ''))
      continue;
    if (OCCASION.test(value.split(' ').at(-1) ?? '') && !ORG_WORDS.test(value)) continue;
    const start = found.index + found[0].length - value.length;
    return { value, start, end: start + value.length };
  }
  for (const found of body.slice(-REACH).matchAll(FOR_LINE)) {
    const value = found[1] ?? '';
    if (!ORG_WORDS.test(value) || !value.includes(' ') || isTown(value)) continue;
    const start = Math.max(0, body.length - REACH) + found.index + found[0].lastIndexOf(value);
    return { value, start, end: start + value.length };
  }
  for (const found of body.slice(0, REACH).matchAll(OF_TOWN)) {
    const value = found[1] ?? '';
    const first = value.split(' ')[0] ?? '';
    // "the rugby club": one word may be a town's by chance.
    if (!/^\p{Lu}/u.test(first) && (!isTown(first) || value.split(' ').length < 3)) continue;
    const start = found.index + found[0].lastIndexOf(value);
    return { value, start, end: start + value.length };
  }
  return undefined;
}
