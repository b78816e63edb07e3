/**
 * How a word for work stands in its sentence: asked of me, wanted of somebody, only named, or another's and not wanted.
 */
import { anyOf } from '../phrases.ts';
import { isMyHabit, isOnlyOthers, isOnlyTold, isToBeDone } from './only-told.ts';
import type { Word } from './role-words.ts';

/** From nothing that counts to what is asked of me by name. */
export const Standing = { not: -1, none: 0, context: 1, named: 2, wanted: 3, lacked: 3.2, mine: 4, only: 5 } as const;

/** "no video", "don't need a", "rather than" */
const NEGATED =
  /(?:(?<!\p{L})(?:no|not|never|non|statt|niente|nicht|kein|keine|keinen|pas|pas de|sin|geen|nor|than|rather than|instead of|less than|more than|in place of|(?<!(?:com(?:e|ing)|go(?:ing)?|pop|nip|head(?:ing)?|driv(?:e|ing)|travel|fly(?:ing)?|hop|get(?:ting)?|take|taking|took|taken) )over|except|apart from|besides|niet)|n't)(?: (?:need(?:ed|ing)?|have|having|want(?:ed)?|require|do|doing|be|be doing|take|taking|looking for|after|asking for|asking you to|about|for|really|bother(?:ing)? with|to be))*(?: to| to be)?(?: the| a| an| any| our| your| more| just| un| une| la| le| ein| eine| einen)? $/iu;
/** "you don't touch the", "you won't be near the": what I keep off. */
const KEPT_OFF =
  /(?<!\p{L})(?:you|u|ya)(?: (?:do not|don't|dont|won't|wont|will not|wouldn't|never|needn't|aren't|are not)|'re not|'ll not|'ll never)(?! (?:just|only|mind|simply|merely|also|have (?:an?|any)|get|know)(?!\p{L}))(?: \p{L}+){1,4} (?:the|our|their|any|any of the) $/iu;
const NEED_NOT =
  /(?<!\p{L})(?:no need (?:for|to)|(?:don't|do not|won't|doesn't) (?:need|want|have) you (?:behind|on|at|with|to (?:bring|use|hold|operate)))(?: a| an| any| the| your)? $/iu;
/** "there's no", "we have no": what is lacking is wanted. */
const LACKED =
  /(?<!\p{L})(?:(?:have|has|'ve|got|left with|with|there's|there is|is|are|still|so|short|down|lack(?:s|ing)?|miss(?:ing)?|lost|losing|nobody|none|somebody|someone|nothing)(?: \p{L}+){0,1} (?:no|nobody|no one|noone|anyone)|nobody|no one|no-one|noone|short of|(?:'re|'m|are|is|am|run|running|bit) short|lack|lacks|lacking|missing|we're missing|short on|down|gap (?:on|for|in)|hole (?:on|for|in)|stuck for|hunting|lost|losing|forgotten(?: all)?(?: about)?|forgot(?: all)?(?: about)?|overlooked|let down by|(?:left|stuck) without|(?:don't|didn't|doesn't|do not|does not)(?: yet| still| actually)? have|(?:are|am|is|'re|'m) not having|not yet(?: got| have)?|haven't got|hasn't got|(?:have|has|'ve) not(?: yet)? got)(?: (?:on|for|to|in|behind|who|doing|do|run|running|can|a|an|the|our|my|one|his|her|their|its|yet|at|as|of|operating)){0,6} $/iu;
/** What an owner does or has: "we've already got", "our own", "Wilf does the", "his brother is doing". */
const OTHERS_BEFORE =
  /(?:(?<!\p{L})(?:already|next to|alongside|beside|besides|plus|join(?:ing)?|meet(?:ing)?(?: up)? with|meet(?:ing)?(?= (?:the|our|my|a|an|your) )|liais(?:e|ing) with|work(?:ing)? (?:with|alongside|under|next to)|report(?:ing)? to|(?:confirmed|filled|booked|done|covered|gone|going|went) (?:with|by)|together with|along with|ask|via|through|from|by|contact|speak to|with (?:another|our own|their own|the house)|(?<!(?:wants?|needs?|likes?|loves?|wish(?:es)?|requires?|have to have) )(?:our|their|her|his|its|the venue's|venue's|my) own|in-house|(?<!of[- ])house|separate|resident|schon|bereits|déjà|ya|already have|sorted|booked|hired|got (?:a|an|the|our|someone|someone for|somebody for|two|another)|(?:we|i|they|he|she|client|venue|hall|church|school|theatre)(?: already| both| all)?(?:'ve| have| has|'s)(?: (?:got|already|hired|booked|lined up|sorted|our|a|an|two|someone|somebody|people|another|the|separate|for))+|there(?:'s| is| are|'ll be| will be| being)(?: (?:already|a|an|another|our|two|also|one|separate|someone|somebody))+|(?:we|i) have(?: \p{L}+)? (?:for|on|doing)|(?:(?:my|our|his|her|their|the|an?|one of (?:my|our|the|their))|(?:someone|somebody|a friend|a mate|\p{Lu}\p{Ll}+)'s) (?:brother|sister|cousin|husband|wife|mate|friend|son|daughter|nephew|niece|colleague|aunt|uncle|dad|father|mum|mother|neighbour|guest|volunteer|member|pupil|student|bridesmaid|groomsman|other \p{L}+|venue|av team|av crew|av people|in-house|house|hall)(?: \p{L}+)?(?:'s| is| are| does| do| did| will| provides| handles| takes| runs| has| brings)(?: (?:do|doing|on|the|our|handling|taking|running|own|provide|got|a|an|their|supply|shooting|for))*|(?:he|she|they)(?:'s|'re|'ll| is| are| does| do| did| will| provide| handle| handles| takes| runs| brings)(?: (?:doing|do|on|the|our|handling|taking|running|own|shooting))*)(?: (?:a|an|the|our|my|their|your|for|to|of|on|do|doing|house|own|other|son|sa|notre|leur|un|une|seinen|einen|eine|ihren|unseren)){0,6} )$/iu;
/** "Bex is shooting", "Dale's on": somebody with a name who is not addressed. */
const NAMED_BEFORE =
  /(?<![\p{L}])(?!(?:You|U|What|It|That|This|There|Who|Where|When|Here|We|I|Kit|Role|Job|Position|Call|Gig|Need|Sound|Audio|Video|Photo|Stream|Camera|So|And|But|The|Mine|Ours)(?!\p{L}))\p{Lu}[\p{L}'-]{1,14}(?:'s| is| are| does| did| will do|'ll do| takes| handles| runs| has| shoots| films)(?: (?:doing|on|the|our|handling|taking|running|shooting|do|got|his|her))+ $/u;
const OTHERS_AFTER =
  /^(?:'s (?:my|our|his|her|their|an?) (?:own |old |good )?(?:cousin|brother|sister|friend|mate|uncle|aunt|neighbour|husband|wife|partner|dad|mum|son|daughter|nephew|niece|colleague)(?!\p{L})|(?:'s)?s?(?: (?:side|part|team|crew|man|guy|person|people|op|op's|department|dept|bit))?(?:(?:,| -|:)? (?:is|are|was|will be|has been|have been|'s|all|is all|we(?:'ve| have) (?:got )?|i(?:'ve| have) (?:got )?|gets)? ?(?:already |all |being |now )?(?:handled|sorted|covered|taken care|booked|done(?! (?:at|by|around|about|from) (?:\d|noon|half|quarter|midnight))|hired|arranged|not needed|not required|filled|confirmed|complete|in place|(?<=(?:are|is) (?:all|already) )there|in hand|in-house|provided|supplied|ours|looked after|separate|elsewhere|for (?:someone|somebody) else|another job|isn't needed|aren't needed|won't be needed|sorted out|crewed|gone)(?!\p{L})|,? (?:he|she|they|we) (?:is |are )?(?:already )?(?:doing|handles?|on it|(?:does|do|has|have)(?= (?:it|that|this|those|one|already|covered)(?!\p{L})| ?[.;,!)]| ?$))(?!\p{L})| (?:isn't|aren't|won't|doesn't|don't) (?:be )?(?:need|want|requir|work)| (?:(?:me|nous|vous) \p{L}+|(?:from (?:the )?[\p{L}']{2,16} )?(?:will be (?:there|around|present|about)|is coming)|says|said|thinks|reckons|suggests|suggested|told|mentioned|recommended|(?:is|are) (?:my|his|her|their|our own|a (?:friend|mate|separate|local|different|volunteer)|from)|starts?|begins?|comes?|arrives?|gets? in|needs? you|wants? you|will (?:show|tell|meet|greet|brief|direct|point|let|start|be there|be in|be on|arrive|come|have|do|bring|set|provide|send|look)|who'll|will already|knows|loads|sets up|has (?:a|an|his|her|the|their|already)|have (?:a|an|their|the|already)|works|goes|leaves|finishes|does|do|provides|provide|plugs|records|uses|has arrived|likes)(?!\p{L})))/iu;
/** "Hamish will be vision mixing" */
const NAMED_DOING =
  /(?<!\p{L})(?!(?:You|It|That|This|There|What|Who|We|I|Kit|Requirement|Role|Job|Work|Task|Gig|Position|Need|Scope|Service)(?!\p{L}))\p{Lu}\p{Ll}+(?: is|'s| will be| are)(?: on| doing)? $/u;
/** "Lachie is TD" */
const IN_SHORT = /(?<!\p{L})(?:td|dop|dp|a[123]|v[12])$/iu;
/** "Switcher: Yuki." in a list of who is there. */
const NAMED_BESIDE =
  /^ ?[:=] ?(?!(?:Yes|No|Needed|Required|Wanted|One|Two|Three|Open|You|Kit|Mon|Tue|Wed|Thu|Fri|Sat|Sun|Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*(?!\p{L}))\p{Lu}\p{Ll}+ ?(?:$|[.,;(])/u;
/** "(audio only, Sandy)", "| Switcher | Huda |": whose it is. */
const NAMED_IN_ROW =
  /^,? (?!(?:You|Kit)\))\p{Lu}\p{Ll}+\)|^ ?\| ?(?!(?:You|Kit|Open|Needed|Tba|Tbc|Vacant|One|Two|Mon|Tue|Wed|Thu|Fri|Sat|Sun|Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*(?!\p{L}))\p{Lu}\p{Ll}+(?: \p{Lu}\S{0,14})? ?\|/u;
/** "Photographer needed? No", "a second camera; I said no" */
const ANSWERED_NO =
  /^(?:(?: \p{L}{2,12}){0,2} ?[?:] ?(?:no|none|nein|non|nee)|[;,.:]? (?:but |and )?(?:i|we) (?:said|told \p{L}+) (?:no|not|never|ask me|maybe|next year))(?!\p{L})/iu;
/** A form's boxes: what is ticked is wanted, what is not is not; they stand before the words or after them. */
const TICKED = /\[ ?x ?\]|[☑☒✓✔✅]/iu;
const BOX = /\[ ?x? ?\]|[☐□☑☒✓✔✅]/giu;
/** "youd not do", "you wouldn't": asked politely. */
const POLITELY = /(?<!\p{L})you(?:(?:'d|d| would| could)? not|(?: wouldn't| couldn't| wouldnt| couldnt))(?= )/iu;
/** "can't do the second camera" any more: somebody else is to */
const CANNOT =
  /(?<!(?<!\p{L})you )(?:can't|cant|cannot|couldn't|can no longer|isn't able to|won't be able to) (?:do|cover|run|man|shoot|handle|take|make)(?: (?:the|our|my|it on|on))? $/iu;
const DOES = /^(?:do|run|cover|handle|take|man)(?: (?:the|our|my))? /i;
/** "a shooter but no mixer" */
const BUT_NO = /(?:(?<!\p{L})(?:have|has|got|is|are)|'ve|'s) [^.;!?]{1,40} but (?:no|not an?|nobody (?:on|for)|no one (?:on|for)) $/iu;
/** "never streamed before": so wanted now */
const NEVER_BEFORE = /(?<!\p{L})(?:never|not|haven't|hasn't|n't)(?: \p{L}+){0,2} $/iu;
const BEFORE_NOW = /^[^.;!?\n,]{0,24}(?<!\p{L})(?:before|yet|until now|till now|so far)(?!\p{L})/iu;
const REFUSED_OUTRIGHT = /^\s*(?:so |and |but |please )?no $/i;
/** "so no streaming": the deed is not wanted, where "so no streamer" lacks one. */
const SO_NO = /(?<!\p{L})so no $/iu;
/** "we lost all the sound to the wind": a thing that failed, and nobody who is lacking. */
const NOBODY_DID = /(?<!\p{L})(?:nobody|no one|no-one|none of us) (?:ever |even |really )?$/iu;
const ONCE_LOST = /(?<!\p{L})(?:lost|losing|missed)(?: (?:all|most|some|half|of|the|our|any)){0,4} $/iu;
/** "unser Tonmeister", "unsere eigene Kamera" */
const THEIRS_ABROAD = /(?<!\p{L})(?:unser(?:e[nmr]?)?|eigene[rn]?|notre|nuestr[oa]|nostr[oa]|onze)(?: \p{L}+)? $/iu;
const PERSON_ABROAD =
  /(?:mann|frau|meister(?:in)?|techniker(?:in)?|graf(?:in)?|mischer(?:in)?|pilot(?:in)?|ingénieur|técnico|tonico|fonico|technicus)$/iu;
/** "in a studio with teleprompter": what stands in the room. */
const EQUIPMENT = /^(?:teleprompters?|prompters?|drones?|autocue|playback|graphics|slides|led.*|encoder|boom|multitrack.*)$/i;
const EQUIPPED =
  /(?<!help )(?<!deal )(?<!\p{L})(?:with|has|plus|including|own|own the|do you (?:also )?(?:have|own|bring|carry|use|fly)|have you (?:also )?(?:got )?|you got)(?: (?:a|an|the|our|your|their|its))? $/iu;
/** "I'm stills only" */
const SENDER_IS = /(?<!\p{L})(?:i'm|i am|he's|she's|they're) $/iu;
/** "the drone myself" */
const MYSELF = /^[^.;!?\n,]{0,10} (?:myself|ourselves|himself|herself)(?!\p{L})/iu;
/** "after photos", "stay for the group photo": an hour of the programme. */
const BY_PROGRAMME =
  /(?<!(?:'re|'m|are|am) )(?<!\p{L})(?:after|before|until|till|then|(?:stay|kindly|pm|am|\d) for)(?: (?:the|a|some|group|family|team))* $/iu;
/** "my son" is no sound. */
const A_CHILD = /(?<!\p{L})(?:my|our|his|her|their|your|the|a|an|[\p{L}]+'s|eldest|youngest|little|older|younger) $/iu;
/** "Stage manager of the opera writing": who writes. */
const SENDERS_OFFICE = /^ (?:of|at|for|from) [^.;!?\n]{0,50} (?:writing|here|speaking)(?= ?[.,;!(]|$)/iu;
/** "our stage manager" is theirs. */
const THEIRS = /(?<!\p{L})(?:our|the|my|their|your)(?: \p{L}+)? $/iu;

/** "Not needed: stills, BTS", "we don't need: photos": a list of what is not asked for, as far as its sentence goes. */
const LISTED_NOT =
  /(?<!\p{L})(?:not (?:needed|required|wanted|included|part of (?:it|this)|asked for|for you)|(?:don't|do not|won't|doesn't|does not) (?:need|want|require|ask for)|no need (?:for|of)|out of scope|excluded|excluding|nicht (?:nötig|benötigt|gewünscht)|pas (?:besoin|nécessaire)|niet nodig|no (?:hace falta|se necesita)|non (?:serve|servono))\s?(?:[:=]|->|\s[–-])(?:[^.;!?\n]*)$/iu;
/** "simple switching of slides is NOT needed", "(switcher + encoder provided by us)" */
const NOT_AFTER =
  /^[^.;!?\n,:]{0,24} (?:is|are|will be) not (?:needed|required|wanted|necessary)(?!\p{L})|^ ?(?:\+|&|and|,) \p{L}+ (?:(?:is|are|will be) )?(?:provided|supplied|by us|from us|ours)(?!\p{L})/iu;
/** "the gala stream fell through", "the stream is off": that job is gone, and nobody is missing. */
const CALLED_OFF =
  /^(?: [^.;!?\n,]{0,30})? (?:(?:fell|has fallen|'s fallen) through|(?:is|was|'s|got|has been|have been) (?:now )?(?:off|cancelled|canceled|called off|scrapped|binned)(?! sick))(?!\p{L})/iu;
const OF_A_THING = /^(?:live[ -]?stream|stream|webcast|broadcast|shoot|film|video)s?$/i;

/** Whether the word's box is ticked, where its line has boxes. */
function ticked(text: string, word: Word): boolean | undefined {
  const before =
    text
      .slice(Math.max(0, word.start - REACH), word.start)
      .split('\n')
      .at(-1) ?? '';
  const after = text.slice(word.end, word.end + AFTER).split('\n')[0] ?? '';
  if (!/[\][☐□☑☒✓✔✅]/u.test(before + after)) return undefined;
  const label = (before + word.text + after).replace(/^[^:\n]{0,30}:/, '');
  const box = /^\s*(?:\[|[☐□☑☒✓✔✅])/u.test(label) ? (before.match(BOX) ?? []).at(-1) : (after.match(BOX) ?? [])[0];
  return box === undefined ? undefined : TICKED.test(box);
}

/** "drone, Brian doing" */
const NAMED_AFTER =
  /^ is \p{Lu}\p{Ll}+(?=[.,;]|$|\s(?:and|who|but)\s)|^(?: and already (?:has|have|got)(?!\p{L}))|^ \(\p{Lu}\p{Ll}+,? (?:who |is |has |'s )*(?:already|said|confirmed|booked|on board|doing|in)(?!\p{L})|^(?: as well| too)?,? but [^.;!?\n]{0,40}(?:different|separate|another|other) (?:person|people|job|firm|company|photographer)(?!\p{L})|^,? \p{Lu}\p{Ll}+ (?:is |are )?(?:already )?(?:doing|does|has|handles|on it)(?!\p{L})/u;
/** "our op is ill", "the streamer took a staff job": lost, so wanted. */
const LOST =
  /(?<!\p{L})(?:lost|replac(?:e|ed|ing|ement)|drop(?:s|ped)? out|dropping out|f[ae]ll(?:en)? (?:ill|through|off|over|down|sick|out)|pulled out|cancel(?:l?ed)? on|cried off|sick|let us down|let me down|cover for|fill(?:ing)? in|stand(?:ing)?(?: |-)?in(?! (?:front|line|the (?:way|back|middle|road)))|step(?:ping)? in|in place of|bail(?:ed|s|ing)|flak(?:ed|es|y)|no longer|can't make it|can no longer|can't do it|can't come|can't now|cannot|injured|tested positive|ill|quit|went under|no-show|laid up|called (?:out|off|in)|down with|fell|unwell|flu|covid|stuck|double-booked|moved (?:to|away)|moved|retir(?:ed|es|ing)|took (?:a|another)|taken (?:a|another)|broke|broken|hospital|having a baby|had a baby|baby|paternity|maternity|parental leave|away|on holiday|on leave|left us|has left|gone|hung up|passed away|died|stops|stopped|gave up|given up|unavailable|not available|isn't available|pregnant|vanished|disappeared|ghosted|jury duty|out of action|out sick|poorly|under the weather|crook|off sick|(?:is|are|was|'s) (?:out|off)(?! of the way)|krank|ausgefallen|abgesagt|verhindert|abgesprungen|malade|désisté|enferm[oa]|de baja|ziek|uitgevallen|malat[oa])(?!\p{L})/iu;
/** A thing or a deed of the past, or another's: "last year's", "the video you did", "we filmed". */
const PAST_BEFORE =
  /(?<!\p{L})(?:thinks?|thought|last (?:year|time|month|week|spring|summer|autumn|fall|winter)(?:'s)?|previous|old|earlier|loved|liked|saw|seen|watched|enjoyed|thanks for|thank you for|remember|resend|existing|you(?:'ve| have)?(?: \p{L}+)? (?:did|made|shot|filmed|recorded|covered|took|sent|photographed|streamed)|on your (?:site|website)|your (?:\p{L}+ )?(?:showreel|portfolio|website|work on))(?: [\p{L}']+){0,4} $/iu;
/** "Used to be: you on A cam" */
const USED_TO = /(?<!\p{L})(?:used to be|was going to be|originally|before it was|first it was)(?!\p{L})/iu;
const PAST_AFTER =
  /^ (?:you (?:did|made|shot|filmed|took|sent|recorded)|from last|of last|last (?:year|time|month|spring|summer|autumn|fall|winter)|we (?:did|made|shot) last|is on our|in 20\d\d)/iu;
/** "We're filming", "I shoot": the sender's own work. */
const SENDERS =
  /(?<!\p{L})(?:we|i|they|he|she|(?<!(?:somebody|someone|person|anybody|anyone|people|one|those|videographer|operator|cameraman|filmmaker) )who|client|we'll)(?:'re|'m|'ll|'d|'ve| are| am| will| shall| will be| have| had| is| plan to| are going to| usually| normally| always| did| also| hope to be| used to| would| want to| wanted to| tried to| started)?(?: (?:be|been|also|currently|always|already|both|usually|going to|normally|just|all|now|out|making|planning on)){0,6} $/iu;
/** "I'm directing a short", "we're producing a": what the sender makes, not whom the sender looks for. */
const SENDERS_WORK =
  /(?<!\p{L})(?:we|i|they|he|she|client|you both)(?:'re|'m|'s|'ll be| are| am| is| will be)(?: (?:also|currently|all|now|just|both))? (?:direct|mak|produc|organis|organiz|host|runn|stag|do|launch|record|film|shoot|stream|tap|plan|cover|photograph|edit|finish|wrapp|lead|curat)\p{L}{0,3}(?<=ing)(?: (?:a|an|our|the|some|another|this|one|my|it|on))?(?: \p{L}+){0,2} $/iu;
/** "Could you film the day and": what follows is asked of me as well. */
const YOU_AND =
  /(?<!\p{L})(?:can|could|would|will|should) (?:you|u)(?!\p{L})[^.;!?\n]{0,60} (?:and|or|&|plus)(?: (?:also|then|maybe|perhaps|possibly|to|even|do|a|some|the|take|shoot|run)){0,4} $/iu;

/** Somebody who is me does it: "you'd be", "need you on", "you with a". */
const YOU =
  /(?<!\p{L})(?:you|u|ya|ye|thee|yourself|yerself|kit|youd|youll|your (?:role|job|part|position|task|bit|slot|spot|duty|duties|seat|post|assignment) (?:is|would be|will be|being|'d be|here)|sie|du|dich|vous|toi|usted|tú|jij|je)(?:'d|'ll|'re|r| would| will| are| can| could| might| may| should| shall)?(?: (?:be|please|pls|still|also|just|only|mainly|possibly|maybe|kindly|do|doing|take|taking|run|running|to|on|at|as|for|in|with|behind|handle|handling|operate|operating|man|manning|cover|covering|there|come|and|get|the|a|an|our|my|your|my own|some|own|willing|able|happy|comfortable|confident|okay|ok|keen|game|open|interested|tempted|free|up|like|love|work|working|spend|help|us|me|out|it|again|provide|look|after|bring|fancy|consider|perhaps|then|this|that|these|those|day|whole|thing|alone|solo|main|one|two|few|join|set|make|have|act|acting|fill)){0,6} $/iu;
/** "you'd be dockside with a", "you at 10.15 with a" */
const YOU_WITH =
  /(?<!\p{L})you(?:'d|'ll|'re| would| will| are)?(?: be)?(?: [\p{L}\d.:]+){0,3} (?:with|on|behind|doing|running|operating|as)(?: (?:a|an|the|our|your|your own))? $|(?<!\p{L})(?:is|be) you, as (?:an? |the |our )?$|(?<!\p{L})(?:te encargas|te encargarías|encargarte|se encarga(?:ría)? usted|t'occup(?:es|er)|vous occup(?:ez|er)|ti occup(?:i|eresti)|übernimmst du|übernehmen sie|kümmerst du dich|kümmern sie sich|zorg jij|neem jij)(?: (?:tú|usted|de|del|la|el|les?|il|della|um|den|die|das|voor|het)){0,3} $/iu;
const YOU_LABEL =
  /(?:^|[\n(,;.]|\p{L} )\s*(?:you\??|your (?:role|job|part|share|bit|side|task|work|function|duty|duties)|role|position|position needed|leistung|angebot|anfrage|dienst|aufgabe|service needed|crew position|job title|requirement|requirements|scope|scope of work|service|services|service required|task|job|gig|need|needs|needed|looking for|wanted|want|seeking|skill|discipline|department|dept|funktion|poste|puesto|functie|rol|work|trade|crew needed|craft|duties|capacity|kind of work|type of work|what we need|what|request|for|re|ask|slot|role required|roles needed)\s?(?:[:=|]|->|=>|\s-)\s?(?:[\p{L}\d/()&+' -]{0,24} )?$/iu;
const YOU_AFTER =
  /^[^.;!?\n(]{0,12}(?:\(|,\s?|\s?[=-]+>?\s?|\s?:\s?|\bis |\bwould be |\bwhich is |\bthat's |\bthat would be )\s?(?:you|u|yourself|kit|toi|dich|usted|your (?:job|role|part))(?:\)|[,.!?;]|$|\s(?:if|please|at|from|on))/iu;
/** Nothing but it: "stills only", "audio rather than", "photos, not film" */
const ONLY_AFTER =
  /^(?: recording| coverage| work)?,?(?: -)?(?:,? only(?! (?:for|if|from|on|until|a|the|one|two|need to))|,? (?:and|but)? ?not (?:a |the |on )?(?:video|film|filming|camera|cameras|photo|photos|photographs|photography|stills|sound|audio|streaming|stream|pictures|recording|shooting|moving)|,? rather than|,? than (?:video|film|photos|stills|filming)(?!\p{L})|,? (?:statt|nicht|geen|niet|pas de|non|niente|nada de) (?:video|film|foto|fotos|vídeo|vidéo)(?!\p{L})|,? instead|,? no (?:video|filming|film|camera|cameras|photos|stills|picture|pictures)(?!\p{L})|,? this (?:time|year)|,? nothing else|,? and nothing)/iu;
const ONLY_BEFORE =
  /(?<!not )(?<!\p{L})(?:only|just|purely|strictly|solely|simply|nur|seulement|uniquement|sólo|solo|alleen|soltanto)(?: (?:be|need|want|needs|wants|for|the|a|an|your|some|on|do|doing|require|asking for|after|about|to|you|it's|as)){0,6} $/iu;

/** "It's a one-camera", "the role is": what the job is. */
const IT_IS =
  /(?<!\p{L})(?:it|this|that|job|role|gig|position|work|task|which|shift|day|brief|ask|request|idea|plan|one|other|other one|(?:what|all) (?:i|we)(?:'d)? (?:need|want|like)(?: from you| of you| you for)?)(?:'s| is|s| was| would be|'d be| will be|'ll be)(?: (?:a|an|the|just|for|only|mainly|basically|purely|simple|small|pure|straight|straightforward|plain|about|to|all|mostly|really|definitely|more of|one|two|three|single|multi|\d|one-camera|two-camera|three-camera|single-camera|multi-camera|\d-camera|one-person|one-man|solo|quick|basic|proper|they're|we're|after|day of|day's|half day of|bit of)){0,5} $/iu;

/** Words of wanting somebody or something, up to the word that is wanted. */
const WANT = anyOf(`
  need/needs/needed/needing/require/requires/required/want/wants/wanted/wanting/seek/seeks/seeking/looking_for/look_for/looking_to/looking_at/after/hunting/hunting_for/searching/searching_for/search_for/trying_to_find/find/hire/hiring/book/booking/get/getting/have/having | would/'d/should like | like/love/prefer/hope/hoping/keen/wish/wishing to/for/you/someone/somebody/it/our/the/a/an/some | 'd/would love/prefer/like/want/need | could do with | could use | short of | missing | lacking | lack | in need of | quote/quotation/price/cost/estimate/rate/fee/rates/costs/bid/tender/proposal/figure for/on/to | available for/to/as/on | availability for/to/as/check | free to/for/as | open to/for | able to | interested in | up for | fancy | fancy a/some | keen on/to | can/could/would/will/might/may you/u/ye/ya | are you | do you | would/do you? mind | be/as our/the/a/an/my | someone/somebody/person/anyone/one/people/who/operator to/for/who/on/can/at | inquiry/enquiry/enquire/request/call/job/gig/work/shift/vacancy/opening/slot/spot/role/position/seat/booking | hold for | wanted | ask/asked/asking/asks | offer/offering
  suchen | suche | sucht | brauchen | brauche | braucht | benötigen | gesucht | hätten | hätte | möchten | bräuchten | fehlt | fehlen | jemand/jemanden | cherche | cherchons | recherchons | recherche | recherchent | besoin | voudrions | aimerions | souhaitons | manque | cherchent | necesitamos | necesito | buscamos | busco | falta | querríamos | queremos | quisiéramos | il nous/me? faut/faudrait | nos hace/haría falta | ci serve/servirebbe | zoek | zoeken | nodig | willen | graag | cerchiamo | cerco | serve | bisogno | vorremmo | procuramos | preciso | precisamos | podrías | puedes | pourriez | peux | können | könntest | kannst | kun | kunt | potresti
`);
const WANT_AFTER =
  /^(?:s|es)?(?: (?:op|operator|person|job|gig|position|role|work|side))?(?:, ?(?=wanted|needed|please|pls|plz|required))?(?: (?:is|are|we|i|we're|they|they're|i'm|gesucht|requis|that|what|so|still|being|also|who|urgently|badly))* ?(?:needed|wanted|required|sought|missing|please|pls|plz|lacking|lack|need|want|short|short of|gesucht|nodig|gezocht|request(?:ed)?|recherché|buscado|qui manque|fehlt|falta|open|vacant|free|available|tba|tbc|\?)(?!\p{L})/iu;

/** What follows makes another thing of the word: "camera gear", "photo booth", "sound check", "video call". */
const OTHER_THING =
  /^(?:-(?:free|friendly|ready)| from (?:him|her|them|his|whoever)(?!\p{L})| ?(?:restoration|banks?|rentals?|gear|kit(?: hire)?|bag|feeds?(?! (?:op|operator|tech))|calls? (?:with|about|to)|meetings?|conferenc\w*|games?|walls?|links?|cards?|booths?|partners?|platforms?|of (?:messages|mails?|emails|consciousness|questions)|rights|agency|agencies|magazines?|labs?|ids?|identification|credentials?|passes|permits?|releases?|consents?|ops?(?= )|opportunit\w*|pit|competition|contest|exhibition|store|shop|rental|hire|equipment|feed from|cable|release|album|clip|angles?|numbers?|positions? (?:at|in|by|on)))(?!\p{L})/iu;
/** "film festival", "camera club": an occasion or a body named after its subject. */
const SUBJECT = /^(?:film|video|camera|photo|photograph|photography|sound|audio|stream|livestream)s?$/i;
const NAMED_AFTER_IT =
  /^ ?(?:club|museum|society|festival|awards?|library|archive|school|college|department|studio|history|night)(?!\p{L})/iu;
/** "second choice", "sound good": no work. */
const OTHER_SECOND = /^ (?!camera|on|for|in|at|at the|please|with|has|is|was|had|got|can't|cancelled|dropped|pulled|fell)\p{L}/iu;
/** "three quotes ... yours is the second" */
const SECOND_PRICE = /(?<!\p{L})(?:quot|price|option|opinion|estimate|bids?|tender|choice|date)/iu;
const OTHER_SOUND =
  /^ ?(?:checks?|bites?|system|stage|of|good|great|ok|okay|fun|fair|like|alright|interesting|doable|feasible|right|as|desk is|engineer's|from|comes|and lights?|at \d)(?!\p{L})/iu;
/** "our vows with good sound": how the film is to be. */
const OF_QUALITY = /(?<!\p{L})(?:with|and)(?: \p{L}+ly| very| really)? (?:good|decent|proper|clear|nice|great|clean|usable|crisp) $/iu;
const NOT_SOUND = /(?:that|this|it|does|would|may|might|not|going to|don't|for) $/iu;
/** "you can switch off", "switch dates" */
const OTHER_SWITCH =
  /^-ons?(?!\p{L})|^(?:ing)? (?:off|out|over|back|around|up|gears?|dates?|days?|weekends?|places|venues?|plans?)(?!\p{L})/iu;
/** "photos at 4" is a line of the programme. */
const SCHEDULED = /^ at \d/i;
/** "The photo call is at two": press come to it. */
const PRESS_CALL = /^ calls?(?!\p{L})/iu;
/** Nothing but the word between two marks: "- audio -", "Fri, sound, 9am". */
const ALONE_BEFORE = /(?:^|[,:;.!?(|/\n-])\s*$/;
const ALONE_AFTER = /^\s*(?:$|[,:;.!?)|/\n(-])/;

const REACH = 100;
const AFTER = 70;
const marks = /[.;!?\n]/;
/** A clause within a sentence: what is said of others ends here. */
const CLAUSE = /,\s|\s(?:and|but|so|while|und|aber|et|mais|y|pero|en|maar)\s(?=\S+\s\S)|\s-{1,2}\s|[()]|:\s/u;

/** "working to a director and", "liaise with the caterer and": all of these are others. */
const WORKS_WITH =
  /(?<!\p{L})(?:(?:work(?:ing)?|liais\p{L}+|report(?:ing)?|coordinat\p{L}+|share|sharing) (?:with|alongside|under|next to)(?! you(?!\p{L}))(?: [^,.;:]{0,40})?|(?:work(?:ing)?|report(?:ing)?) to (?:a|an|the|our|my|their|his|her)(?: [^,.;:]{0,40})?) (?<! as )(?<! as (?:an?|the|our|my) )$/iu;
/** "if you're licensed", "isn't essential": asked for beside the work. */
const OPTIONAL =
  /^[^.;!?\n]{0,24}(?<!\p{L})(?:if you(?:'re| have| can| do| own| also| happen)|(?:isn't|not|is not|aren't) (?:essential|necessary|vital|crucial)|optional|a bonus|nice to have|would be (?:nice|lovely|great|a plus|handy) (?:if|but|too|as well))/iu;
/** "Also do you do drone? not bothered if not" */
const NOT_BOTHERED =
  /^ ?(?:stuff |shots |too |as well )?\? ?(?:it's )?(?:not (?:bothered|fussed|needed|a must|essential|important)|no (?:worries|bother|problem|matter|big deal)|(?:doesn't|don't) matter|(?:only|just) (?:asking|curious|wondering))(?!\p{L})/iu;
/** "a videographer who can also do a few photos" */
const ALSO_DOES =
  /(?<!\p{L})(?:who|that) (?:can|could|will|would|does|is able to|might)(?: \p{L}+)? (?:also|as well) (?:\p{L}+ ){0,3}$|(?<!\p{L})who also (?:\p{L}+ ){0,3}$/iu;
const BUT = /\s(?:but|while|whereas|aber|mais|pero|maar)\s/i;
/** Words right before a thing that is wanted. */
const WANT_NEAR =
  /(?<!\p{L})(?:needs?|wants?|wanted|missing|lacking|searching|search|after|requires?|requiring|seeks?|seeking|looking for|short of|(?:quote|price|rate|book|booked|hire|charge|cost|estimate|ask|asks|asking|free|available|about|you|figure)(?: us| me| you)? (?:for|on)|help with|interested in|brauchen|suchen|hätten gern|cherch\w+|necesit\w+|busc\w+|zoek\w*)(?: (?:you|u|someone|somebody|help|human|person|pair of hands|hand|body|one|man|woman|guy|a|the|some|good|clean|decent|for|on|with|den|die|le|du|el))* $/iu;

/** How the word stands, by what is before and after it in its sentence. */
export function standingOf(text: string, word: Word): number {
  const [tail] = text.slice(word.end, word.end + AFTER).split(marks);
  const after = tail ?? '';
  const sentence =
    text
      .slice(Math.max(0, word.start - REACH), word.start)
      .split(/[.;!?\n]/)
      .at(-1) ?? '';
  const clause = sentence.split(CLAUSE).at(-1) ?? '';
  const { role, weight } = word;
  const sounds = role === 'audio' && weight === 'loose';
  if (
    isOnlyTold(word, clause, after) ||
    OTHER_THING.test(after) ||
    (SUBJECT.test(word.text) && NAMED_AFTER_IT.test(after)) ||
    (sounds && OF_QUALITY.test(sentence)) ||
    (sounds && !WANT_NEAR.test(clause) && (OTHER_SOUND.test(after) || NOT_SOUND.test(clause))) ||
    (/second$/i.test(word.text) &&
      (OTHER_SECOND.test(after) || SECOND_PRICE.test(text.slice(Math.max(0, word.start - REACH), word.start)))) ||
    (role === 'photo' && SCHEDULED.test(after)) ||
    (role === 'other' && SENDERS_OFFICE.test(after)) ||
    (/^son$/i.test(word.text) && A_CHILD.test(clause)) ||
    (role === 'vision mixing' && weight === 'loose' && OTHER_SWITCH.test(after))
  )
    return Standing.none;
  const box = ticked(text, word);
  if (box !== undefined) return box ? Standing.only : Standing.not;
  if (/^(?:photo|picture|portrait|foto)s?$/i.test(word.text) && BY_PROGRAMME.test(clause)) return Standing.none;
  if (LISTED_NOT.test(sentence) || NOT_AFTER.test(after) || (OF_A_THING.test(word.text) && CALLED_OFF.test(after))) return Standing.not;
  const deed = /(?:ing|video|photos|pictures|stream)$/i.test(word.text);
  // "We lost all the sound", "nobody filmed it": what went wrong once.
  const ended = (sounds && ONCE_LOST.test(clause)) || (/[^e]ed$/i.test(word.text) && NOBODY_DID.test(clause));
  // "No video: the last one moved", where "No videographer yet" lacks one.
  if (deed && REFUSED_OUTRIGHT.test(clause)) return Standing.not;
  const lacked =
    (LACKED.test(clause) && !NEED_NOT.test(clause) && !(deed && SO_NO.test(clause)) && !ended) ||
    CANNOT.test(clause + (DOES.exec(word.text)?.[0] ?? '')) ||
    BUT_NO.test(sentence) ||
    (NEVER_BEFORE.test(clause) && BEFORE_NOW.test(after));
  const beyond = after.split(BUT)[0] ?? '';
  if (lacked || (!ended && (LOST.test(sentence.split(BUT).at(-1) ?? '') || LOST.test(beyond)))) return Standing.lacked;
  if (
    (sentence.trim() === '' && NAMED_BESIDE.test(after)) ||
    NAMED_IN_ROW.test(after) ||
    ANSWERED_NO.test(text.slice(word.end, word.end + AFTER)) ||
    (MYSELF.test(after) && !/(?<!\p{L})(?:was|were)(?!\p{L})/iu.test(clause)) ||
    SENDER_IS.test(clause) ||
    (/ing$/i.test(word.text) && NAMED_DOING.test(sentence)) ||
    (IN_SHORT.test(word.text) && NAMED_DOING.test((sentence + word.text).replace(IN_SHORT, ''))) ||
    (role === 'other' && /(?:manager|director)$/i.test(word.text) && THEIRS.test(clause)) ||
    (PERSON_ABROAD.test(word.text) && THEIRS_ABROAD.test(clause))
  )
    return Standing.not;
  if ((NEGATED.test(sentence) && !POLITELY.test(sentence)) || NEED_NOT.test(sentence) || KEPT_OFF.test(sentence)) return Standing.not;
  if (/(?<!\p{L})(?:only|nur|just|purely)(?!\p{L})/iu.test(word.text) || ONLY_AFTER.test(after) || ONLY_BEFORE.test(clause))
    return isOnlyOthers(clause) ? Standing.not : Standing.only;
  if (
    OPTIONAL.test(after) ||
    NOT_BOTHERED.test(text.slice(word.end, word.end + AFTER)) ||
    ALSO_DOES.test(clause) ||
    (role === 'photo' && PRESS_CALL.test(after)) ||
    (EQUIPMENT.test(word.text) && EQUIPPED.test(clause))
  )
    return Standing.context;
  if (WORKS_WITH.test(sentence)) return Standing.not;
  if (YOU_AFTER.test(after)) return Standing.mine;
  if (isMyHabit(word, clause) || PAST_BEFORE.test(clause) || PAST_AFTER.test(after) || USED_TO.test(sentence)) return Standing.context;
  if (YOU.test(sentence) || YOU_WITH.test(sentence) || YOU_AND.test(sentence) || YOU_LABEL.test(sentence)) return Standing.mine;
  if (
    /^(?:live[ -]?stream|webcast)s?$/i.test(word.text) &&
    /(?<!\p{L})(?:(?:got|have) an?|by|via) $/iu.test(clause) &&
    !/^ (?:team|company|crew|partner|provider|op|guy|person)(?!\p{L})/iu.test(after)
  )
    return Standing.wanted;
  if (OTHERS_BEFORE.test(clause) || NAMED_BEFORE.test(clause) || OTHERS_AFTER.test(after) || NAMED_AFTER.test(after)) return Standing.not;
  if (IT_IS.test(clause) || isToBeDone(word, clause) || WANT_AFTER.test(after)) return Standing.wanted;
  if (weight === 'loose') {
    const alone =
      role === 'audio' &&
      ALONE_BEFORE.test(text.slice(Math.max(0, word.start - 4), word.start)) &&
      ALONE_AFTER.test(text.slice(word.end, word.end + 3));
    return WANT_NEAR.test(clause) ? Standing.wanted : alone ? Standing.named : Standing.none;
  }
  if (WANT.test(word.text)) return Standing.wanted;
  if (SENDERS.test(clause) || SENDERS_WORK.test(clause)) return Standing.context;
  return WANT.test(sentence) ? Standing.wanted : Standing.named;
}
