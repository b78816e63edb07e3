/**
 * What is to be handed over, as the sender words it: a film by its length, a number of clips, what is wanted whole or one by one.
 */
import { latin } from '../phrases.ts';
import { handedOver } from './handed-over.ts';

export type Thing = { value: string; start: number; end: number };

const IN_WORDS = 'one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|forty-five|fifty|sixty|ninety';
const NUMBER = String.raw`(?:\d{1,3}(?:\s?(?:-|to|or|bis|à|a)\s?\d{1,3})?|(?:${IN_WORDS})(?:\s(?:to|or)\s(?:${IN_WORDS}))?)`;
const LENGTH = String.raw`(?:half[- ]hour|half an hour|(?:hour|minute)[- ]long|${NUMBER}[\s-]{0,2}(?:seconds?|secs?|s|minutes?|mins?|m|hours?|hrs?|hr)(?:-long)?)(?![\p{L}\d])`;
const NUMBER_ABROAD = String.raw`(?:\d{1,3}(?:\s?(?:-|bis|à|a|tot)\s?\d{1,3})?|ein(?:er|e)?|zwei|drei|vier|fünf|sechs|acht|zehn|une?|deux|trois|quatre|cinq|six|huit|dix|quinze|un[oa]?|dos|tres|cuatro|cinco|diez|due|tre|quattro|cinque|dieci|[eé]{1,2}n|twee|drie|vijf|tien)`;
const LENGTH_ABROAD = String.raw`${NUMBER_ABROAD}(?:\s(?:bis|à|tot|a)\s\p{L}{3,7})?\s?(?:Minuten?|Sekunden?|Min\.?|Sek\.?|minuten|minuut|seconden|secondes?|minut[io]s?|second[io]|segundos|minutes?)(?!\p{L})`;
/** How many, one by one or in a list: "3 x", "one", "a couple of". */
const COUNT = String.raw`(?:(?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty)(?:\s?x)?\s|a (?:few|couple of)\s|some\s|several\s)`;
const ADJECTIVE = String.raw`(?:short|longer|quick|vertical|square|long|edited|unedited|uncut|final|full[- ]length|full|raw|single|social(?: media)?|promotional|promo|highlights?|recap|teaser|same[- ](?:day|night)|next[- ]day|daily|nightly|cinematic|simple|subtitled|captioned|event|clean|multicam|individual|separate|polished|little|wee|tiny|brief|horizontal|landscape|portrait|nice|whole[- ]day|petite?|kurzer|kurzes|kurzen|korte?|breve)`;
/** A word that may stand between how long and what. */
const WORD = String.raw`(?!(?:of|and|or|for|to|the|in|from|with|at|is|are|on|into|by|a|an|et|un|une|und|ein|eine|y|e|en|een|de|des|con|mit|pour|für|para|we|you|before|after|talks?|break|drive|walk|slots?|speech|presentation|set)(?!\p{L}))[\p{L}'-]{2,14}`;
const MADE = String.raw`(?:films?|videos?|vids?|reels?|clips?|edits?|cut-?downs?|cuts?|recaps?|highlights?|teasers?|trailers?|promos?|sizzles?|montages?|summar(?:y|ies)|versions?|pieces?|verticals?|time-?lapses?|documentar(?:y|ies)|docos?|docs?|ads?|adverts?|spots?|masters?|loops?|after-?movies?|snippets?|testimonials?|stories|wrap-?ups?|compilation|recordings?|shorts|chapters?|episodes?|vignettes?|segments?|tributes?|profiles?|portraits?|instal?lments?)`;
const MADE_ABROAD = String.raw`(?:\p{L}{2,12}-)?(?:\p{L}{0,9}[Ff]ilme?|[Rr]ückblick|[Ff]ilmpje|[Kk]urzfilms?|[Vv][ií]d[eéè]os?|[Cc]lips?|[Zz]usammenschnitt|[Mm]itschnitt|[Tt]railers?|[Tt]easers?|[Rr]eels?|[Aa]ftermovie|[Bb]est-?of|[Ff]ilmat[oi]|[Mm]ontage|montaje|resumen|résumé|riassunto|[Ss]amenvatting|[Vv]erslag|[Ii]mpressie|[Rr]eportage|reportaje)`;
const ABOUT = String.raw`(?:(?:about|around|approx\.?|roughly|max\.?|maximum|at most|up to|under|circa|ca\.?|say|no more than|between|etwa|rund|ungefähr|höchstens|environ|unos|ongeveer|zo'n|so)\s)?`;
const PER = String.raw`(?: (?:every|each) (?:day|evening|night|morning)| (?:of|from|for) (?:each|every|all)(?: of)?(?: the)?(?: (?:two|three|four|five|six|seven|eight|nine|ten|\d{1,2})(?= \p{L}))? [\p{L}'-]{3,14}| the same (?:day|night|evening)| each(?! (?!(?:for|and|please|by|to|as|or|in|on|at|is|would|will|with)(?!\p{L}))\p{L})(?!\p{L}))?`;
const [FROM, TO] = [String.raw`(?<![\p{L}\p{N}:-])`, String.raw`(?![\p{L}\p{N}-])`];
/** "video edit", "highlights-reel": written so that the long list stands in the pattern once, which makes it quicker to build. */
const MADE_IN_A_ROW = String.raw`(?:${MADE}(?:[\s-]|${TO}))+(?<![\s-])`;
const MEDIA = String.raw`(?:footage|material|data|files?|rushes|recordings?|clips?|videos?|photos?|photographs|pictures|images|stills|selects|mp4s?|cards)`;
const SHOWN = String.raw`(?:ceremony|service|show|speech(?:es)?|vows|talks?|concert|performance|programme|play|recital|interviews?|sessions?|set|waltz|liturgy|gala|mass|match|game|dances?|toasts|debate|panel|keynotes?|lectures?|musical)`;
const OWN_FILE = String.raw`(?:a|an|its|their|one|own|separate|individual|single)(?: (?:own|separate|single|individual))* (?:files?|clips?|videos?|links?|recordings?)`;

/** Where what is made is shown. */
const OUTLET = String.raw`web ?sites?|home ?page|socials?|social media|channels?|stories|feed|intranet|newsletter|archives?|lobby|landing page|web ?page|web|site|ticket counter|shop window`;

/** Told by how long it is: these need nothing more to be a thing that somebody makes. */
const MEASURED = [
  String.raw`${LENGTH}[\s-]{1,2}(?:${WORD}[\s-]){0,2}?${MADE_IN_A_ROW}${PER}`,
  String.raw`${MADE_IN_A_ROW}(?: (?:of|lasting|at|around|about|with (?=max|at most|about|around|up to)|-) | \(|[,:] )${ABOUT}${LENGTH}(?:(?<=\([^()]{0,40})\))?`,
  String.raw`(?:${ADJECTIVE}\s)?${MADE_ABROAD}(?: (?:récap(?:itulatif)?|recap|corto|breve|resumen))? (?:(?:von|de|di|van|d'|da|à)\s?|\()${ABOUT}${LENGTH_ABROAD}(?: (?:y|et|e) (?:medio|demie|mezzo))?\)?`,
  // "1 film 3 min", "cinematic film 15 min"
  String.raw`(?:${ADJECTIVE}|image|corporate|wedding|brand|\d{1,2}|one|two|three) (?:film|video|reel|clip|trailer|teaser)s? ${NUMBER}\s?(?:minutes?|mins?|seconds?|secs?)${TO}(?! (?:of|apart|before|after|late|early|into)(?!\p{L}))`,
  String.raw`${NUMBER}\s(?:minutes|seconds) of (?:edited )?(?:film|video)${TO}`,
  // "90 seconds for our website", "1x video 3 minutes"
  String.raw`${NUMBER}[\s-](?:minutes|seconds|mins?|secs?) for (?:our|the|my|your) (?:${OUTLET})${TO}(?! launch)`,
  String.raw`\d{1,2}\s?x\s?(?:${WORD}\s)?${MADE}[ ,:]{1,2}${ABOUT}${LENGTH}`,
  // "40 edited photos", "individual tracks for each speaker"
  String.raw`(?:\d{1,3}|${IN_WORDS})(?:\s?(?:-|to)\s?\d{1,3})?\+? (?:or so )?(?:(?:fully|high[- ]res|colou?r) )?(?:edited|retouched|finished|graded|processed|final) (?:photos?|photographs|images|pictures|pics|stills|shots|jpe?gs|frames)${TO}`,
  String.raw`(?:individual|separate) (?:audio )?tracks? (?:for|of|per) (?:each|every) [\p{L}'-]{2,14}`,
  String.raw`(?:(?:\p{L}{3,12}|\d{1,3}[- ]?)minütige[nrs]?|${NUMBER}-(?:Minuten|Sekunden)-)\s?(?:${MADE_ABROAD})`,
].map((pattern) => new RegExp(latin(FROM + pattern), 'gi'));

const COUNT_ABROAD = String.raw`(?:zwei|drei|vier|fünf|sechs|acht|zehn|deux|trois|quatre|cinq|dix|dos|tres|cuatro|cinco|due|tre|quattro|cinque|twee|drie|vijf|tien)\s`;
/** How many and of what kind, right before what is measured. */
const BEFORE = new RegExp(
  latin(String.raw`${FROM}(?:${COUNT_ABROAD}|${COUNT}(?:(?:${ADJECTIVE}|${WORD})\s){0,2}|(?:${ADJECTIVE}\s){1,2})$`),
  'i',
);

/** Told by an adjective: a short film, edited highlights. */
const DESCRIBED = new RegExp(
  latin(
    String.raw`${FROM}${COUNT}?(?<size>(?:${ADJECTIVE}\s){0,4})(?<noun>(?<=(?:short|longer|little|wee|tiny|brief|edited|final|promo|promotional|social|full|full-length) )(?!(?:social|promo|highlights?|event|theatre|theater|doc\p{L}*|feature|student|music) )[\p{L}-]{3,12} (?:films?|videos?|reels?)|highlights?(?: (?:reel|video|film|edit|clip|cut)s?)?|recaps?(?: (?:video|film|reel|edit)s?)?|sizzle(?: reel)?s?|trailers?|teasers?|promos?|after-?movies?|reels?|clips?|cut-?downs?|montage|cut(?! (?:to|from|of|the|a)\b)|edits?|social (?:cuts?|edits?|videos?)|(?<!(?:audio|sound) )recordings? of (?:each|every|all(?: the)?) (?:talk|session|speaker|speech|match|game|performance|presentation|set|panel|lecture)s?|recordings?|footage|talking-head interviews?|testimonials?|documentar(?:y|ies)|photo gallery|gallery|videos?|films?|stories)${TO}(?<per>${PER})`,
  ),
  'gi',
);
/** Words that promise a thing by themselves; the rest need a count, a length or an adjective. */
const PLAIN =
  /^(?:videos?|films?|edits?|recordings?|footage|clips?|reels?|stories|gallery|trailers?|promos?|recaps?|highlights?|cut|montage|documentar(?:y|ies)|testimonials?|sizzles?)$/i;

/** Said of anything that is filmed. */
const VAGUE =
  /^(?:(?:nice|simple|cinematic|quick|clean|little|wee|tiny|brief) )+(?:videos?|films?|documentar(?:y|ies)|recordings?|footage|clips?|edits?)$/i;

/** So many of them, the whole of it, each by itself: things only where the sentence wants or promises them. */
const PROMISED = [
  String.raw`(?:each|every|all(?: the)?|the)\s(?:[\p{L}'\d-]{2,14}\s){1,4}?(?:as|in|on) ${OWN_FILE}`,
  String.raw`(?:separate|individual|single|own) (?:unedited |edited |uncut )?(?:files?|clips?|videos?|recordings?|links?)(?: (?:for|of|per) (?:each|every)(?: of the)?(?: (?!by|on|in|and|within|at|before|after|as)[\p{L}'-]{2,14}){1,2})?`,
  String.raw`(?:(?:${ADJECTIVE})\s)?(?!(?:it|them|that|this|all|be|just|only|want|need|the|is|are|an?|or|filmed|recorded|and|plus)\s)[\p{L}'-]{3,14}(?:\s(?!filmed|recorded|and|or|an?\s|the\s)[\p{L}'-]{3,14})?\s(?:in full|uncut|unedited|in (?:its|their) entirety|topped and tailed)`,
  String.raw`${SHOWN}(?: with (?:my |our |the )?\p{L}{3,14})? complete(?=\s?(?:[.,;)\n]|$))`,
  // "die Reden ungekürzt", "les discours en entier"
  String.raw`(?:die|den|das|der|alle) \p{L}{3,20} (?:ungekürzt|ungeschnitten|in voller Länge|am Stück|vollständig)`,
  String.raw`(?:les?|la) \p{L}{4,14} (?:en entier|en intégralité|dans (?:son|leur) intégralité)`,
  // "three pen drives with the complete film", "one copy on pen drive"
  String.raw`(?:\d{1,3}|${IN_WORDS}|an?) (?:pen|usb|thumb|flash|memory) ?(?:drives?|sticks?) (?:with (?:the )?(?:complete |full |whole |edited )?(?:film|video|recording|programme|footage)|(?:for|of|per) (?:each|every) \p{L}{3,14})`,
  String.raw`(?:\d{1,3}|${IN_WORDS}|a) cop(?:y|ies) on (?:an? )?(?:(?:pen|usb|thumb|flash|hard) ?)?(?:drives?|sticks?|usbs?|dvds?|disks?)`,
  // "one film of the whole evening is plenty"
  String.raw`(?:one|a single) (?:(?:full[- ]length )?(?:film|video|recording|edit|dvd|clip)|full[- ]length file)(?: of the (?:whole |entire |full |complete )?[\p{L}'-]{3,14})?(?=\s?(?:[.,;()\n]|$| (?:is|are|would|will|and|plus|for|to|from|that|which|by|we|on)(?!\p{L})))`,
  // "a relaxed film for our homepage"
  String.raw`(?:${WORD} ){0,2}(?:films?|videos?|clips?|reels?) for (?:our|the|my) (?:${OUTLET})`,
  String.raw`(?<=(?:need|want|like|plus|deliver|get|require) (?:also |some |a few )?)(?:reels|rushes|raws|selects|camera originals)(?! (?:of|from)(?!\p{L}))`,
  String.raw`(?:full|whole|entire|complete|uncut|unedited|raw)\s(?:[\p{L}'-]{3,14}\s)?${SHOWN}(?: recording)?(?! (?:filmed|recorded|covered|captured|streamed|taped|on (?:film|video|camera)|day|is|starts|runs))(?: (?:on|in|by) an? (?:(?:hard|pen|usb) )?(?:drive|stick|link|usb|disk|card))?`,
  String.raw`(?:\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty)(?:\sto\s\d{1,3})?\s(?:x\s)?(?:${WORD}\s){0,3}?(?:films|videos|vids|reels|clips|edits|cut-?downs|cuts|verticals|horizontals|testimonials|recordings|teasers|trailers|selects|photos|photographs|pictures|images|stills|Bilder|Fotos)`,
  String.raw`(?:zwei|drei|vier|fünf|sechs|acht|zehn|\d{1,2}) (?:\p{Ll}+e )?\p{L}{0,14}(?:[Vv]ideos|[Cc]lips|[Ff]ilme)`,
  String.raw`(?<!(?:has|have|got|hear) the )(?:vertical|horizontal|square|shorter|longer|long|extended) versions?`,
  String.raw`${NUMBER}[\s-](?:minutes?|seconds?|mins?|secs?)[\s-](?:extract|excerpt)s?`,
  // "a recording for the family", "complete recording as a download"
  String.raw`(?<=(?:want|need|like|love|require|deliver|provide)s? (?:an?|one) )(?:clean |edited |archival |audio )?recording (?:for|of) (?:the|our|my) [\p{L}'-]{3,14}`,
  String.raw`(?:complete|full|whole|clean|archival|one clean) (?:recording|video)(?! of (?:each|every|all))(?: (?:as|in|on) (?:an?|one) (?:download|link|file|stick|drive))?`,
  String.raw`time-?lapse(?= (?:of|too|as well|from|video)|[.,;!\n]|$)`,
  String.raw`(?:complete|full|entire|untouched|raw) interviews(?! (?:filmed|recorded|covered|streamed|live|are|is|start|run))(?: on [\p{L}\d ]{1,12}(?:drives?|sticks?))?`,
  String.raw`\p{L}{0,12}(?:mitschnitt|aufzeichnung) (?:in voller Länge|aller \p{L}{4,20}|des ganzen \p{L}{4,20}|der ganzen \p{L}{4,20})`,
  String.raw`(?:registratie|opname|captatie) van (?:het|de) (?:hele|volledige|ganse) \p{L}{4,20}`,
  String.raw`(?:one |single )?edited (?:version|copy|recording)(?: of the [\p{L}'-]{3,14})?`,
  String.raw`edited ${SHOWN}(?: \(\d{1,2}\))?|(?:ceremony|speeches|highlights) (?:edit|cut)`,
  String.raw`(?:individual|separate) (?:audio )?tracks?`,
  String.raw`(?:gala|ceremonia|misa|función|boda|actuación|charla|conferencia|obra|ponencia|cérémonie|messe|pièce|conférence|cerimonia|messa|serata) (?:completa|entera|íntegra|complète|entière|intégrale|intera)(?: (?:editada|montada|montée|montata))?`,
  String.raw`(?:centaine|vingtaine|trentaine|cinquantaine|dizaine) de photos(?: \p{Ll}+ées)?`,
  String.raw`(?:all (?:the )?)?(?:raw|unedited|uncut|multitrack|single-file|${ADJECTIVE}\s${WORD})\s${MEDIA}(?: (?:on|in|by) an? (?:(?:hard|pen|usb) )?(?:drive|stick|link|usb|disk|card))?`,
  String.raw`(?:all (?:the )?)?(?:raw|unedited|uncut|multitrack|single-file|edited|iso|project)\s(?:${WORD}\s)?${MEDIA}(?: (?:on|in|by) an? (?:(?:hard|pen|usb) )?(?:drive|stick|link|usb|disk|card))?`,
  String.raw`(?:${WORD}\s)?(?:footage|rushes|recording|interview|files?|service|ceremony) (?:on|in|by) an? (?:(?:hard|pen|usb) )?(?:drive|stick|link|usb|disk|card)`,
  String.raw`(?:all (?:the |of the )?|les )rushes|(?<=(?:just|only|simply) (?:take |need |want )?the )(?:rushes|footage|(?:raw|original) (?:footage|files|material))`,
  String.raw`(?<=(?:wants?|needs?|like|love|deliver|after|get) (?:an?|one) )(?:recap|teaser|trailer|sizzle|aftermovie|montage|round-up|reel)(?! (?:of|from)(?!\p{L}))(?: for (?:the |our )?\p{L}{3,14})?`,
  String.raw`(?:short|edited|full-length) (?:${WORD} )?(?:films?|videos?|edit|recordings?|reels?)`,
  // "one clean file per talk", "the full concert as one file"
  String.raw`(?:one|a|a single) (?:(?:clean|single|finished|edited|uncut|long) )?(?:file|clip) (?:per|for each|for every) [\p{L}'-]{3,14}`,
  String.raw`(?:one|a single) (?:clean |finished |edited |uncut )?file of the [\p{L}'-]{3,14}`,
  String.raw`(?:full|whole|entire|complete) ${SHOWN} (?:as|in|on) ${OWN_FILE}`,
  String.raw`(?:\d{1,3}|${IN_WORDS}|half a dozen|a dozen) (?:${WORD} )?(?:frame grabs|screen ?grabs|stills|headshots)`,
  String.raw`archive (?:copy|cut|version)(?: of the [\p{L}'-]{3,14})?|(?:online|web|photo) gallery`,
  String.raw`(?:one )?mp4s?(?: of the [\p{L}'-]{3,14})?`,
  String.raw`(?:enregistrement|captation|mitschnitt|aufzeichnung|grabación|registrazione|opname) (?:intégrale?|íntegra|completa|complète|de la plénière|des interventions|der vorträge)(?: des [\p{L}'-]{3,16})?`,
].map((pattern) => new RegExp(latin(`${FROM}${pattern}${TO}`), 'gi'));

const NOT_ASKED =
  /\b(?:no|not|without|one of (?:those|these)|saw|seen|watched|loved|liked|enjoyed|last year'?s|previous|don't need|won't need|skip|for example|(?<!(?:'d|would|should|will) )like the|similar to|than|showreel|on your (?:site|website)|screening of|mix(?:es|ed)? (?:\w+ ){0,3}live into|allows?(?: only)?|permits?(?: only)?|thank(?:s| you) for|(?<!(?:can|could|would|will) )you (?:made|did|cut|shot|edited|sent)|(?<!(?:can|could|would|will|should|if|that|do) )you (?:make|shoot|produce)|best(?! $)|award(?:ed)?|shows|screens|we(?:'ll| will) (?:make|cut|edit)|(?<!(?:can|could|should|shall|if|that) )(?:we|i) (?:make|cut|edit|produce)|(?<!(?:who|that|which|also|and) )(?:makes|produces|handles)|(?:he|she|editor|firm|company|team|agency) (?:cuts|edits)|(?:he|she|they|manager|team|office|department|agency|company|firm|colleague|intern)(?: will|'ll)? (?:takes? care of|looks? after|sees? to)|attach(?:ed)?|here(?:'s| is)|(?:we|i|they|he|she)(?:'re| are|'m| am|'s| is)(?: \w+)? (?:making|shooting|producing|filming|directing|finishing)|(?:colleague|else|he|she|they)(?:'ll| will| is| are)? (?:make|makes|making|cut|cuts|edit|edits)|(?:op|operator|shooter|recordist|crew|mixer|camera|hand|person) (?:for|on))\b[^.;!?),]{0,24}$|n't (?:need|want|include|cover|require) [^.;!?),]{0,24}$|\b(?:(?:we|i)(?:'ll| will)? (?:give|bring|hand out)|existing|already|old|linked|attached|your|our|my|his|her|their|show|playing(?: in| back| out)?|screening|play|screen|hours of|watch(?:ed)?)\s(?:the |our |my |an? )?$/i;
/** The sentence wants, promises or lists it. */
const WANTED =
  /(?<!\p{L})(?:want(?:s|ed)?|need(?:s|ed)?|receive[ds]?|'d like|would like|like|love|get(?:ting)?|expect(?:s|ed)?|deliver(?:y|ed|s|ables?|able)?|provide[ds]?|suppl(?:y|ied)|hand(?:ed)?(?: |-)?over|give|giving|send|outputs?|product|edit|include[sd]?|including|after(?:wards)?|hope|would be|take|cut|plus|submit|archive|wld be|finished|from you|as for|return|result|wish(?:es)?|is all|just|only|request|asks? for|asking for|share|upload|leave|keep|grateful for|livrer|livrable|souhaitons|voudrions|aimerions|recevoir|besoin|entrega|recibir|servirebbe(?:ro)?|serve|servono|ricevere|erwarten|erhalten|bekommen|ontvangen|krijgen|necesitamos|queremos|wünschen|gewünscht|bräuchten|brauchen|reichen|vorremmo|graag|willen)(?!\p{L})/iu;
const WANTED_AFTER =
  /^[^.;!?\n]{0,30}(?<!\p{L})(?:by|please|within|afterwards|for (?:our|social)|to (?:our|their)|(?:is|are) (?:all|enough|plenty|due)|reichen|will do|would be|(?:is|are) to be (?:handed|given|delivered|sent|submitted))(?!\p{L})/iu;
/** What exists, was made before or is another's. */
const EXISTS =
  /(?<!\p{L})(?:we(?:'ve| have)(?: \p{L}+)? (?!asked|said|agreed)|there (?:are|is)|i(?:'ve| have)|filmed|recorded|shot|already|last year|handed out|they (?:upload|send|shoot|film)|from (?:the|our)|hours? of|worth of|drive with|of (?:our|the) (?:existing|old)|out of|turn(?:ing)? (?:the|our|these|those|all))(?!\p{L})[^.;!?\n]{0,30}$/iu;
/** "A quote for two videos ... was": another's or the price of it. */
const AFTER_NOT =
  /^(?:\s?(?:(?:(?:is |are |being )?(?:shown|played|screened)|friends|makers?|screenings?|fest|competition|contest|card|wall|op\b|ops\b|operator|crew|production|shoot|festival|calls?\b|camera|team|booth|editor))|[^.;!?\n]{0,20}(?:(?<!\b(?:like|as) )last year|(?:is|are) (?:shown|played|screened)|(?:is|are) (?:being )?(?:made|done|cut|edited|handled|provided|covered|looked after|taken care of|sorted|recorded) (?:by|in our|at our|in-house)|\(we make|\(not you|by (?:our|the) own|(?<!and,? )separately)|[^.;!?\n,]{0,32}(?:(?:is |are )?not (?:needed|required|necessary|wanted)(?! (?:un)?til)|(?:isn't|aren't|won't be) (?:needed|required|necessary|wanted)(?! (?:un)?til)|unnecessary))/i;
const LIST =
  /(?<!\p{L})(?:deliverables?|to be delivered|delivery|outputs?(?: expected)?|product|à livrer|entrega|handover|what (?:we'd|we|you'd) (?:get|need|like)[^:\n]{0,30})(?: are| would be| include| is| expected)?\s?[:=-]/iu;

/** "a 5-minute film and our vows in full": what is joined to a thing is one too. */
const AND = /^(?:,| and| &| \+| plus| as well as){1,2}(?: (?:an?|one|the|our|their|all|some|also))* ?$/i;
const MOST_BETWEEN = 24;
/** "to film the full show": what is to be filmed, and not what is handed over. */
const FILMED =
  /(?<!\p{L})(?:on (?:film|video|camera),|grabar|filmar|rodar|filmer|capter|riprendere|registrare|filmare|gravar)(?: (?:la|el|le|il|lo|a|o|toda|tutta|toute))? $/iu;

const REACH = 90;
const sentenceBefore = (text: string, start: number): string =>
  text
    .slice(Math.max(0, start - REACH), start)
    .split(/[.;!?](?=\s)|\n\s*\n/)
    .at(-1) ?? '';

/** "to film each": what is done, and no thing. */
const VERB = /(?<!\p{L})(?:to|we|you|we'd|you'd|would|could|can|will|should|please|and|just|someone|somebody) $/iu;
const VERB_LEAD = 12;

/** Things that the sender asks for, each once, in order. */
export function deliverablesIn(text: string): Thing[] {
  const things: Thing[] = [];
  const listed = LIST.exec(text);
  const add = (from: number, written: string): void => {
    const article = /^(?:an?|the|our|my|their|some|one(?= [\d\p{L}-]+ (?:[\p{L}-]+ )?\p{L}))\s/iu.exec(written)?.[0].length ?? 0;
    const whole = written.slice(article);
    const value = whole.trim();
    const start = from + article + whole.length - whole.trimStart().length;
    const end = start + value.length;
    if (things.some((thing) => (start < thing.end && end > thing.start) || thing.value.toLowerCase() === value.toLowerCase())) return;
    things.push({ value, start, end });
  };
  const isListed = (start: number): boolean => listed !== null && start > listed.index && start - listed.index < 200;
  const refused = (start: number, end: number): boolean => {
    const line = sentenceBefore(text, start).split('\n').at(-1) ?? '';
    if (/(?:\[ ?\]|[☐□]) ?$/u.test(line)) return true;
    return NOT_ASKED.test(line) || AFTER_NOT.test(text.slice(end, end + 40));
  };
  for (const pattern of MEASURED)
    for (const match of text.matchAll(pattern)) {
      const start = match.index - (BEFORE.exec(text.slice(Math.max(0, match.index - 40), match.index))?.[0].length ?? 0);
      const end = match.index + match[0].length;
      if (!refused(start, end)) add(start, text.slice(start, end));
    }
  const joined = (start: number): boolean =>
    things.some(({ end }) => end < start && start - end < MOST_BETWEEN && AND.test(text.slice(end, start)));
  /** "Full ceremony plus a film of 12 minutes" */
  const joins = (end: number): boolean =>
    things.some(({ start }) => start > end && start - end < MOST_BETWEEN && AND.test(text.slice(end, start)));
  const promised = (): void => {
    for (const pattern of PROMISED)
      for (const match of text.matchAll(pattern)) {
        const [start, end] = [match.index, match.index + match[0].length];
        const before = sentenceBefore(text, start);
        if (
          refused(start, end) ||
          (EXISTS.test(before) && !joined(start)) ||
          FILMED.test(before) ||
          !(isListed(start) || joined(start) || joins(end) || WANTED.test(before) || WANTED_AFTER.test(text.slice(end, end + 50)))
        )
          continue;
        add(start, match[0]);
      }
  };
  promised();
  for (const match of text.matchAll(DESCRIBED)) {
    const { size = '', noun = '', per = '' } = match.groups ?? {};
    const counted = /^(?:an?|one|two|three|four|five|six|\d{1,2})\s/i.test(match[0]) && isListed(match.index);
    const beside = joined(match.index);
    if (PLAIN.test(noun) && size === '' && per === '' && !counted && !beside) continue;
    if (
      /^(?:testimonial|talking|stor)/i.test(noun) &&
      /(?<!\p{L})(?:film|record|shoot|capture)(?:ing|ed)? $/iu.test(text.slice(Math.max(0, match.index - 10), match.index))
    )
      continue;
    const plainly = `${size}${noun}`.trim();
    if (/^event (?:videos?|films?)$/i.test(plainly) || VAGUE.test(plainly)) continue;
    // "to film each bull"
    if (per === ' each' && VERB.test(text.slice(Math.max(0, match.index - VERB_LEAD), match.index))) continue;
    if (/^raw|footage$/i.test(plainly) && EXISTS.test(sentenceBefore(text, match.index))) continue;
    if (refused(match.index, match.index + match[0].length)) continue;
    add(match.index, match[0]);
  }
  // What stands beside one of these is one too.
  promised();
  // A whole item of a list says more than the words of it that told it; of an item that holds two things, these stay.
  for (const { start, end } of handedOver(text)) {
    const inside = things.filter((thing) => thing.start < end && thing.end > start);
    if (inside.length > 1 || inside.some((thing) => thing.start < start || thing.end >= end) || refused(start, end)) continue;
    for (const thing of inside) things.splice(things.indexOf(thing), 1);
    add(start, text.slice(start, end));
  }
  things.sort((a, b) => a.start - b.start);
  // A list under its own name says better what is wanted than the words before it.
  const named = listed ? things.filter(({ start }) => start > listed.index) : [];
  const all = named.length > 0 ? named : things;
  const ours = EDITED_BY_THEM.test(text);
  return all
    .filter(
      ({ value }) =>
        !ours ||
        !/(?:films?|videos?|reels?|clips?|edits?|recaps?|highlights?|trailers?|teasers?)$/i.test(value) ||
        /raw|unedited|uncut/i.test(value),
    )
    .filter((thing) => !all.some((other) => other !== thing && saysMore(text, thing, other)))
    .slice(0, 12);
}

/** "The cut's ours": what is made of it is none of mine. */
const EDITED_BY_THEM =
  /(?<!\p{L})(?:(?:the )?(?:cut|edit|editing|post)(?:'s| is| are| will be) (?:all )?(?:ours|in-house|on us|done (?:here|in-house|by us|by our)|handled (?:here|in-house|by us|by our))|we(?:'ll| will| do)?(?: do| handle)? (?:cut|edit|editing|(?:do|handle) the (?:cut|edit|editing)) (?:it |everything |them )?(?:ourselves|in-house|here)|our (?:own )?editor (?:cuts|edits|will cut|will edit|does|takes))(?!\p{L})/iu;

/** What it is, whatever it is called. */
const kindOf = (value: string): string =>
  (
    /(films?|filme|filmat[oi]|filmpje|zusammenschnitt|rückblick|montage|v[ií]d[eéè]os?|promos?|clips?|edits?|cuts?|reels?)(?![\p{L}-])/iu.exec(
      value,
    )?.[1] ?? ''
  )
    .toLowerCase()
    .replace(/^(?:film\p{L}+|zusammenschnitt|rückblick|montage|v[ií]d[eéè]os?)$/u, 'film')
    .replace(/s$/, '')
    .replace('video', 'film');
const countOf = (value: string): string =>
  /^(?:two|three|four|five|six|eight|ten|\d{1,2}(?![\d-]))(?= )/i.exec(value)?.[0].toLowerCase() ?? '';

/** Whether one thing is said in general and the other says how long or how many: "a short promo ... a 1-minute promo", "two edits: a 60-second cut". */
function saysMore(text: string, thing: Thing, other: Thing): boolean {
  if (text[thing.end] === ':' && other.start > thing.end) return true;
  if (other.value.toLowerCase().startsWith(`${thing.value.toLowerCase()} `)) return true;
  const measured = /\d[\s-]?(?:s|m)|minut|second|sekunde|hour/i;
  if (measured.test(thing.value)) return false;
  if (/^final (?:cut|edit)$/i.test(thing.value)) return true;
  if (kindOf(thing.value) === '' || kindOf(thing.value) !== kindOf(other.value)) return false;
  if (countOf(thing.value) !== '') return countOf(thing.value) === countOf(other.value) && measured.test(other.value);
  return (
    /^(?:(?:short|quick|couple of|few|simple|promo|kurze[rs]?|petite?|korte?|breve|corto) )+|^(?:films?|v[ií]d[eéè]os?) (?:corto|breve|récap)/i.test(
      thing.value,
    ) &&
    (measured.test(other.value) || countOf(other.value) !== '')
  );
}
