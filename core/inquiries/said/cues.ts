/**
 * What a date or a time is said of: the shoot, the first call, the wrap, the answer, a delivery, or something that is no part of the work.
 */

import {
  callElsewhere,
  deliveryElsewhere,
  otherElsewhere,
  pastElsewhere,
  replyElsewhere,
  showElsewhere,
  wrapElsewhere,
} from './elsewhere.ts';
import { callDone, callNamed, callOfHours } from './call.ts';
import { latin } from '../phrases.ts';
import { replyWanted } from './reply.ts';
import { doneByOthers, ofOwnHours } from './subject.ts';
import { tellsOfElse } from './tells-of.ts';
import { wrapNamed } from './wrap.ts';

export type Cue = 'event' | 'call' | 'wrap' | 'reply' | 'delivery' | 'show' | 'other' | 'past';

/** One pattern of many phrases; each line holds a few of them. */
const oneOf = (phrases: string, flags = 'gi'): RegExp => new RegExp(latin(`(?:${phrases.trim().split(/\n\s*/).join('|')})`), flags);

const reply = oneOf(
  String.raw`
    (?:let (?:me|us) know|lemme know|let (?:me|us) no|drop (?:me|us) a line|melde(?:n sie|t euch)? (?:sich|dich|dir)?|meld dich|\bsay\b(?: yes)?(?! (?:(?:about|around|at|from) )?(?:\d|half|noon|midday|quarter|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b)|commit|kindly inform|inform(?: me| us)?|any (?:chance of )?word|laat (?:je )?(?:het )?(?:me |ons )?weten|hit me (?:back|up)|sing out|holler|(?:gimme|give (?:me|us)) an? (?:shout|ring|bell|buzz|yell|tinkle|call|text|\p{L}{2,12}(?= (?:by|before|until|till)\b))|(?:need|want|have) (?:your|a) word|need an? (?:ok|okay|yes|answer)|\bok(?:ay)?(?=\sby)|(?<!\b(?:be|is|are|been|being|get|gets|'re) )release\b(?! (?:you|the crew)\b)|lmk|tell (?:me|us|her|him|them)|\bhear|get back to (?:me|us|them|her|him|the client|my client)|hear (?:back )?from you|hear back|come back to (?:me|us)|reply|replies|respond|revert|response|answer|yes\s?\/\s?no|(?:have|get|see) (?:a|your|the) (?:price|quote|quotation|proposal)|confirm\b|confirmation|rsvp|decide(?!s)|decision|decid(?:e|ing)|yes or no|a yes|quotes?(?: in| back| over| to me| to us)?|proposals?|bids?\b|estimates?|quotation|costs?|costings?|prices?|rates?|figures?|availability(?: to me| back)?|need to know|have to know|must know|know for sure|know (?:by|before)|lock(?:ed|ing)? (?:this|it|crew|you|someone|the crew|down)[^.;]{0,20}|lock in|book(?:ing)? (?:someone|crew|somebody)|shout(?!ing\b)|ping me|ring me back|text me back|message me|write back|tell me|send (?:me |us |over )?(?:a |your |the )?(?:quote|rate|price|numbers|offer|cost|estimate|availability)[^.;]{0,25}|make a (?:call|decision)|finali[sz]e (?:crew|the crew|this|our crew))(?:[^.;?!]|\.(?=\w)){0,60}?\b(?:on or before|by(?!e)|before|until|till|no later than|not later than|latest|at the latest|within)
    (?:quotes?|bids?|proposals?|answers?|replies|responses?|quotations?)\s(?:are |is )?(?:due|needed|required|wanted)(?: by| on| before)?
    (?:deadline|due)(?: (?:for|to))? (?:replies|reply|answers?|quotes|respond|responding|bids|your answers?|your reply)(?: is| will be|:)?
    (?:reply|answer|response|decision|confirmation)(?: (?:needed|required|due|deadline))?\s?(?:by|before|:|on)|rsvp\s?:?
    (?:quotations?|quotes?|bids?|proposals?|tenders?|submissions?|offers?|answers?|replies|rf[pq]s?)\s(?:closes?|closing|(?:are |is )?(?:to be|must be) (?:in|received|submitted|lodged|with us)|must reach us|accepted until)(?: at| by| on| before)?
    (?:proposal|bid|submission|response|rsvp|quotation|tender|answer)s?(?: submission)? (?:deadline|due)(?: date)?(?: is|:)?|(?:^\s*|[\n.;]\s*)(?:deadline|due)\s?:
    (?:quote|reply|answer|response|confirm) deadline(?: is|:)?
    (?:rückmeldung|bescheid|meld(?:en sie|e|et|t)? (?:sich|dich|euch)|antwort\w*|confirmar?|confirmer|réponse|répond\w*|réponds-moi|respuesta|responde\w*|risposta|antwoord|laat (?:je |u )?(?:het )?(?:me|mij|ons))[^.;?!]{0,40}?\b(?:bis|avant|jusqu'au?|d'ici|pour le|antes|entro|vor|voor|hasta|até|spätestens|uiterlijk)
    (?<!\b(?:they|he|she|who|client|committee|council|board|venue|club|team|boss)(?:'ll|'d| will| should| can| would)? )(?:tell (?:me|us)|let (?:me|us) know|lmk|get back to (?:me|us)|(?:need|have) to know|need (?:an? )?(?:answer|reply|yes|decision)|confirm|respond|advise|share|revert|text|answer|reply|say)(?=,?\s(?:by )?(?:today|tonight|2nite|tomorrow|tmrw|tmr|tmw|tomoz|2moro|this))
    (?:brauch\w*|bräucht\w*|benötig\w*) [^.;?!]{0,20}?\bbis(?=[^.;?!]{0,40}\b(?:antwort|rückmeldung|bescheid|zusage|ja|angebot|okay|ok)\b)
    (?:dime|dinos|av[ií]sa(?:me|nos)|cont[eé]sta(?:me|nos)|dis-moi|dites-moi|réponds(?:-moi)?|sag(?:en sie)? (?:mir|uns)|fammi sapere)(?: \p{L}+){0,2}(?=\s(?:mañana|hoy|heute|morgen|demain|aujourd'hui|ce soir|vandaag|vanavond|oggi|domani|stasera)\b)
    réponse (?:souhaitée|attendue|demandée)(?=\s(?:demain|aujourd'hui))|(?:apply|submit)(?: \w+)? by
    \b(?:text|txt|msg|(?<!\b(?:the|our|this) (?:\p{L}{1,14} )?)ring|phone|call|write|message|e-?mail|ping|advise|reach(?= (?:me|out|back|us|her|him|my)\b))(?: (?!for\b|time|the\b|is\b|at\b|by\b)\w+)?(?: back)?(?:,? (?:on |at )?[+(]?\d[\d\s().-]{5,18}\d)?,? (?:by|before)
    \b(?:(?<!\b(?:be|is|are|gets?|being|been) )lock(?:ed|ing)?|pencil|pass|hold|yes|no|y\/n|decline|accept)(?: (?:in|or \w+))? (?:by|before)
    (?:need|have|got|promised) to (?:tell|answer|let|call|ring) (?:them|him|her|the client|my client|the venue)(?: know)?(?=,? (?:by )?(?:today|tonight|tomorrow|tmrw|2moro|this))
    (?:call|e-?mail|text|ring|phone)(?: or \w+)?(?: (?:me|us|\w+))?(?: (?:on |at )?[+(]?\d[\d\s().-]{5,18}\d)?(?=\s(?:today|tonight|tomorrow))
    (?:hold|holding|keep(?! (?:you|u|us|\p{L}+ing|on)\b))[^.;]{0,30}\b(?:until|till?)|(?:offer|slot)[^.;]{0,20}\b(?:stands|open) (?:until|till)
  `,
);
const call = oneOf(
  String.raw`
    \bload[- ]?in\b|\bcrews? meets?\b|\bloading in\b|\bload in\b|\bcrew call\b|\bcall[- ]?times?\b
    (?<!\b(?:media|press|photo|curtain|roll|cast|casting|phone|zoom|conference|team|client|talent|artists?|artists'|judges'?|volunteers?|choir|orchestra|players?|riders?|vet|last|bugle) )\bcall(?:s|'s)?\b(?=,?\s?(?:is|at|time|will be|would be|:|=|-|for|from|on)?\s?(?:at |about |around |~)?(?:\d|noon|midday|midnight|half|quarter|six|seven|eight|nine|ten|eleven|\bmon|\btue|\bwed|\bthu|\bfri|\bsat|\bsun|\bjan|\bfeb|\bmar|\bapr|\bmay|\bjun|\bjul|\baug|\bsep|\boct|\bnov|\bdec|\bthe\b))
    \bon[- ]?site\b|\bonsite\b|\bget[- ]?in\b|\bset[- ]?up\b|\bsetting up\b|\brig(?:ging)?\b
    \barriv(?:e|al|ing)\b
    \baccess\b|\bbe (?:(?:up|out|down|over|back|round) )?(?:there|here)\b|\bbe (?:set|ready|in place|in position|on deck|\w+-?side)\b
    \b(?:to|please|must|you|you'd|you'll) be (?:at|on|in)\b(?! (?:\d|a\b|an\b|touch|contact|town|charge))
    (?=[bp])(?<=(?:^|[,;.])\s{0,2})(?:please )?be (?:at|on|in)\b(?! \d)|\bb (?:there|here)\b|\bmeet(?= \d)|\bon (?:deck|location)\b(?= (?:at |by |from |for )?\d)|\bwelcome (?:any ?time )?(?:from|after)\b(?= \d)|\bgates? for crew opens?\b|\bstarts? (?:time )?for (?:you|crew|us)\b|\bpack[- ]in\b
    \b(?:need|want|like) (?:you|u) (?:there|here|in place|on set|(?=\d|at \d))|\bcrew (?:in(?=\s?[:=]|\s?(?:at |by |from |for )?\d)|from|access|arriv\w*)\b
    \bget (?:there|here)\b|\bin (?:position|place)\b(?= (?:(?:from|by|at|for)\b|\d))|\bget into\b|\bcan get in\b
    \b(?:you'd be|you would be|you are|you're) (?:welcome|expected|needed|wanted)\b|\bthe ground\b(?= from)
    \btech\b(?= (?:is |starts )?(?:at|from)\b)|\btest\b(?= (?:is |run )?(?:on|at|from)\b)|^\s*start(?= on\b)
    (?:^|\n)\s*set(?:-up)?(?=\s?:)
    (?:^\s*|[,;.] )in\b(?= (?:\d{3,4}\b|\d{1,2}(?:[:.]\d\d)?\s?[ap]m?\b))|\bmeet (?:at|in|by|outside) (?:the|our)\b|\btreffen\b
    \b(?:beginn|einsatzbeginn|anwesend|anwesenheit|aanwezig|présence)\b|\b(?:empezamos|comenzamos)\b|\bbe on (?:the|our)\b
    \byou (?:there|here)\b|\bturn(?:ed)? up\b|\bshow(?:ed)? up\b|\breport(?:s|ing)?\b(?: time)?|\bbuild\b|\bprep day\b|\bcrew\b(?= (?:at )?\d\d?[:.]?\d\d)|\binstall\b
    \bcam(?:era)?s?\b(?= (?:are |is |at |on at |in at )?(?:\d{1,2}\s?[ap]\.?m|\d{1,2}[:.h]\d\d|noon))
    \bstart (?:time )?(?:on )?day (?:\d|one)\b|\b(?:sought|required|needed|wanted) from\b|\battend (?:at|from|by)\b|\bcome(?= (?:at |by |for )?\d)|\blet in (?:at|from|by)\b
    \b(?:hall|room|venue|doors?|building|gates?|barn|church|theatre|theater)(?: is| are| will be)? open (?:to|for) (?:crew|you|us)\b
    \bbe here(?= \d)|\b(?:hall|room|venue|camera|crew|vendors?) from\b|\bon the platform\b|\bbump[- ]?in\b|\bmove[- ]?in\b
    \bdays? (?:start|begin)(?:s|ing)?\b|\bstart time for (?:you|crew)\b
    (?<!\b(?:back|check|log|dial) )\bin (?:at|by|from)\b(?=\s?(?:\d|half|noon|six|seven|eight|nine|ten|eleven))
    \b(?:aufbau|arbeitsbeginn|treffpunkt|dienstbeginn|vor ort|arrivée|installation(?= (?:dès|à|le|:|vers))|eintreffen|drehbeginn|aankomst|rendez-vous|llegada|montaje|arrivo|allestimento|opbouw)\b
    \brehears\w*|\bsound ?check\b|\btech (?:check|run)\b|\bcamera check\b|\bdoors open for crew\b
    \bvenue opens (?:for|to) (?:us|crew)\b
  `,
);
const wrap = oneOf(
  String.raw`
    \bwrap\w*|\bstrike\b|\bload[- ]?out\b|\bget[- ]?out\b|\bde-?rig\w*|\btear ?down\b|\btorn down\b|\btaken down\b|\bknock(?:ing)? off\b|\bclear(?:ed)? out\b|\bdismiss(?:ed|al)\b|\bon the truck\b|\bstand[- ]?down\b|\bstood down\b|\bbump[- ]?out\b
    \bdone (?:by(?! (?:our|a|an|their|his|her|my|the (?!end|time|evening|afternoon|latest))\b)|at|around|about)\b|\bfinish\w*(?! (?:from|line)\b)|(?<!\b(?:year|month|week|dead|back|front|high|low|split)[- ]?)\bends?\b(?! of (?!(?:the )?day at))|\bending\b|\brelease(?:d)?\b
    \boff (?:the )?clock\b|\bhome by\b|\bpack(?:ed|ing)?[- ](?:up|down|out)\b|\bclear(?:ed)? (?:the )?(?:venue|room|hall)\b
    \bhard out\b|\bcurfew\b|\bover by\b|\bfree to go\b|\bdepart(?:ure|s)?\b(?=:| (?:at|by|\d))|\bleave (?:by|at)\b|\bcan leave\b|\bleave(?= (?:on )?(?:mon|tue|wed|thu|fri|sat|sun)\p{L}* (?:at |by )?\d)|(?<!\b(?:clips?|edits?|videos?|files?|photos?|reels?|posts?|content|cuts?|stories|footage|pics|pictures|images|walk(?:s|ing)?|hand(?:s|ed)?|carried|comes?|coming|march(?:es|ing)?|rolls?|steps?|given|brought|served|parades?|rid(?:es?|ing)|fil(?:es?|ing)|read|drawn|lays|laid|sent|sets?|setting) )\bout (?:at|by)\b
    \b(?:out|done)\b(?=\s?(?:\d|mon|tue|wed|thu|fri|sat|sun))|\bcleared by\b|(?<!\b(?:runners?|riders?|teams?|players?|kick(?:s|ed|ing)?|goes|go|sets?|lift|blast|race|first|tip|tee|push|bully|cast|they're|cars?|boats?|walkers?|cyclists?|swimmers?|start|them) )\boff (?:by|at)\b|(?<!\b(?:quotations?|quotes?|bids?|tenders?|bidding|rf[pq]s?) )\bcloses\b
    \b(?:we|doors|gates|stalls|fair|festival|market|venue|hall|show) close\b(?= (?:at|by|\d))|\bclosing\b(?= (?:at |by )?\d)
    \bcrew out\b|(?<!\b(?:him|her|it|walk(?:s|ing|ed)?|comes?|coming|came|bring(?:s|ing)?|take[sn]?|rolls?|rolling|parades?|march(?:es|ing)?|steps?|jumps?|pours?|emerges?|driv(?:es?|ing)|rid(?:es?|ing)|sails?|carr(?:y|ies|ied)|hand(?:s|ed|ing)?) )\bout of (?:the|there|here)\b|\boff (?:it|the ice|site)\b|\bgo home\b|\bvacated?\b|\bgone by\b|\bthrough by\b
    \bclear (?:of|by|at)\b|\b(?:you|crew|you'll|we) can go\b|\bconcluding\b|\bover at\b(?= (?:\d|noon|midnight|half|quarter|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve))
    \bout of the building\b|\bdone\b(?=:)|\b(?:you are|you're|you'll be|we're) free (?:at|by|from)\b|\bhome\b(?= (?:by|at)\b)
    \bconcludes?\b|\baway by\b
    \b(?:ende|abbau(?: fertig)?|feierabend|schluss|drehschluss|terminan|fin(?: prévue)?|démontage|acabamos|acaba|hasta|termina|terminamos|desmontaje|fine|einde|afbouw|klaar|ende der veranstaltung)\b(?=\s?:?\s(?:(?:ca|um|gegen|bis|à|a las|alle|om|vers|am|le|el|il|op|du|des|den|\p{L}+(?:tag|day|di|dag|es|do))(?!\p{L})|\d))
  `,
);
const show = oneOf(
  String.raw`
    (?<!\b(?:stage|side|back|kitchen|front|loading|dock|vestry|rear|artists'|goods) )\bdoors?\b|\bstarts?\b|\bstarting\b|\bbegins?\b|\bkicks? off\b|\bkick-?off\b|\bopens?\b(?! (?:days?|evenings?|house|mic|air|nights?|studios?|gardens?|mornings?|afternoons?|weekend)\b)|\bopening\b|\bceremony\b|\bkeynote\b
    \bshow ?time\b|\bcurtain\b|\bguests\b|\bdinner\b|\blunch\b|\bbreakfast\b|\breception\b|\bspeeches\b|\bruns?\b|\brunning\b
    \bevent is\b|\bshow is\b|\bdrinks\b|\bparty is\b|\bprogram(?:me)?\b|\bmatch\b|\bfirst (?:act|game|talk|session|speaker)\b
    \bgame\b|\bparade\b|\bawards? (?:are|at|is)\b|\bparty\b|\bregistration\b|\b(?:music|bands?|disco|dancing|racing|demos?|tastings?|stalls|speakers|choirs?|(?:we|they) play|playing|seminar|plenary|lecture|quiz|vernissage|cocktail|(?:general )?assembly|mass|banquet|hearing|on ?stage)\b(?=,? (?:is |are |from |at )?\d)|\bconference (?:is|goes)\b|\bit goes\b|\bgoes\b
    \bservice is\b|\bsessions?\b|\btalks?\b|\bshow\b(?! (?:days?|up)\b)|\bconference\b|\bmeeting\b|\bconcert\b|\brecital\b|\bworkshop\b
    \bagm\b|\bpanel\b|\bevent\b(?! days?\b)|\bservice\b|\bmeeting (?:is|at)\b
  `,
);
const delivery = oneOf(
  String.raw`
    \bdeliver\w*|\bedits?\b|\bedited\b|\bfinal (?:cut|video|film|version|files)\b|\bdraft\b|\brough cut\b|\bfirst cut\b|(?<!\b(?:you're|you are|you'll be|you get|ur|crew is) )\bcut by\b
    \bturn ?around\b|\bturned around\b|\bfootage\b|\bfiles?\b|\bhighlights?\b|(?<!\b(?:to|quick|let me|me|i'll) )\brecap\b|\bpublish\w*|\bupload\w*|\bpost(?:ed|ing)?\b
    \bgo(?:es)? (?:live|out)\b|\bair(?:s|ing)\b|\bneed (?:it|them|everything|the (?:video|film|clips|photos|reel|finished))\b
    \bvideos? (?:by|back|ready|done)\b|\bready by\b|\bsizzle\b|\bteaser\b|\breels?\b|\bclips?\b|\bphotos (?:by|back)\b
    \bfinished (?:video|film|piece)\b|\blaunch(?:ing|es) (?:it|the video)\b
  `,
);
const other = oneOf(
  String.raw`
    \binvoice\w*|\bpayment\w*|\bpaid\b|\bpay(?:able|ing)?\b|\bdeposit\b|\bpurchase order\b|\bcontract\b|\bticket\w*|\bon sale\b
    \bannounc\w*|\b(?:tickets|album|film|video|results) (?:are |is )?released\b|\bapprov\w*|\bline-?up\b
    \bregistration (?:opens|closes|deadline)|\bearly[- ]bird\b|\bborn\b|\bfounded\b|\bsince\b|\bestablished\b|(?<!\b(?:bank|public|long|national) )\bholiday\b(?! (?!(?:is|are|was|from|until|till|on|in|for|at|and|but|so|then|with|to|the|this|next|week|that|when|if|by|after|before)\b)[a-z])|\bis (?:a|the) (?:public|bank) holiday\b
    \bvacation\b|\bannual leave\b|\bon leave\b
    \b(?:i'm|i am|we're|we are|he's|she's|they're|will be|i'll be) (?:(?!(?:stream|film|broadcast|record|work|play|perform)ing )\w+ )?(?:away|(?:off|out)(?! (?:(?:the|our|this) (?!(?:country|office|area|state|whole|entire|rest)\b)\p{L}+ (?:by|at|before|around|about)\b|(?:stage|site|set|ice|air|water|field|pitch|premises)\b|(?:by|before|no later than)\b|(?:mon|tue|wed|thu|fri|sat|sun)\p{L}* (?:by |at |around |about )?\d{1,2}(?:[:.]\d\d)?\s?(?:[ap]m?\b|latest\b|sharp\b|h\b)))|abroad|travel+ing|unavailable|not available|busy|booked|offline|back(?! to back|-to-back| (?:at|in) (?:the|our|its) same))\b
    \bout of (?:the )?office\b|\b(?:back|return\w*) (?:in|to) (?:the )?(?:office|work|town)\b|\bwhen i return\b
    \b(?:quick|short|to|for a|have a|video|phone|brief) chat\b|\bquick call\b
    \b(?:a|phone|photo|press|media|video|zoom|intro|discovery|planning|prep|hop on a|short|conference|our(?! call (?:time )?\d)|the next) call\b
    \bgive (?:me|us) a (?:call|ring|shout)\b|\bcall me\b|\bring me\b|\bphone me\b|\bspeak\b|\bmeet up\b|\bzoom\b|\bsite visit\b
    \brecce\b|\bscout(?:ing)?\b|\bwalk-?through\b|\bpre-?pro(?:duction)? meeting\b|\bplanning meeting\b|(?<!\byou(?:'d|'ll| would| will| should| must) )\bmeet (?:you(?!,? (?:at |by |for |around |about )?(?:\d|noon|half|quarter))|for|(?:me|us)(?! (?:at |by )?\d))\b
    \bmeeting with\b|\bcoffee\b|\bsubmission\w*|\bapplication\w*|\bcall for (?:papers|entries)|\bversion\b|\bupdated\b|\bdated\b
    \bsigned\b|\bsent\b|\bgot your (?:name|number|details)|\bmy flight\b|\bflight\w*|\bfly(?:ing)?\b(?! a drone)|\bcheck-?in\b
    \bexpires?\b|\bvalid\b|\bsave the date\b(?=.{0,12}email)|\boffice hours\b|\bopening hours\b|\breach me\b
    \bavailable (?:to talk|by phone)|\bour (?:last|previous) (?:event|show|conference|one)\b
    \b(?:board|committee|council) (?:meets|decides)\b|\b(?:rain|backup|back-up|reserve|fallback|spare|alternat\w+) (?:date|day)?
    (?=t)(?<=(?:^|[.;:,\n])\s{0,2})travel(?:ling)?(?: day)?(?: is| on|:)?(?= )|\b(?:site|venue|planning|technical) (?:visit|viewing|tour|walk)\b|\btell (?:the|our|my|them|everyone)(?: \w+){0,2} on\b
    \bhalf[- ]term (?:is|from|runs|starts|week is)\b
    \bif (?:it|the weather|we)[^.;,\d]{0,20}(?:rain\w*|wet|pours?|snows?|bad)\b|\bif wet\b|\brained off\b
    \bapply\b(?!\s?:| by\b)|\bdrone permit\b|\bpermit\b
  `,
);
const past = oneOf(
  String.raw`
    \b(?!previous day\b)(?:previous|old|former|original(?:ly)?|earlier) (?:dates?|days?|run|plan|booking|schedule|slot|version)\b|\bhaving been\b|\bused to be\b|\bformerly\b
    \blast (?:year|time|month|spring|summer|autumn|fall|winter|week)(?:'s)?\b|\bprevious(?:ly)?\b(?! (?:day|night|evening|afternoon|arvo|morning)\b)|\byears? ago\b|\bin the past\b
    \bback in\b|\byou (?:filmed|shot|did|covered|worked|recorded|made|ran|helped)\b
    \bwe (?:met|worked|spoke|talked|had|held|did|ran|used|hired)\b|\b(?:was|were) (?:held|on|in|at|great|so)\b|\b(?:had been|was|were) (?:to be|planned|scheduled|set|fixed|arranged|due|down|going to be|meant to be|supposed to be)(?: (?:for|on))?\b|(?<!\b(?:could|can|may|shall|should|might|would|do|did|when|until|till|once|after|before|while) )\b(?:i|we) (?:had )?(?:wrote|said|put|typed|told you|gave you)\b|\bhad (?:it|you|this|them|us) down (?:for|as)\b|\bit was\b
    \bthat was\b|\bour \d{4}\b|(?<!\b(?:be|is|are|being|gets?|'s|been) )\bheld (?:on|in)\b|\bused to\b|\boriginal(?:ly)?\b|\bpostponed from\b|\bmoved from\b
    \bwas scheduled\b|\brescheduled from\b|\binstead of\b|\bnot (?:on )?(?:the )?$
  `,
);
const event = oneOf(
  String.raw`
    \bshoot(?:ing)?\b|\bfilm(?:ing)?\b|\bevent\b|\bconference\b|\bwedding\b|\bshow\b|\bgig\b|\bjob\b|\bfestival\b|\bsummit\b
    \bgala\b|\bworkshop\b|\bcongress\b|\bavailable (?:on|for|from)?\b|\bfree (?:on|for|from)\b|\bavailability (?:on|for)\b
    \bdates?\b|\bwhen\b|\bcover(?:age|ing)?\b|\bevent dates?\b|\btak(?:es|ing) place\b|\bhappening\b|\bhappens\b
    \bwe(?:'re| are) (?:on|doing|hosting|holding|having|running)\b|\bmeeting\b|\blaunch\b|\bagm\b|\btournament\b|\bchampionships?\b
    \bconcert\b|\brecital\b|\bworks?\b|\bfair\b|\bexpo\b|\bstream(?:ing)?\b|\bscheduled\b|\bmoved to\b|\bnow (?:on|to|for|set for|fixed for|it's|it is|be (?:on|held))\b|\b(?:will|shall|to) (?:now |next )?be held\b|\b(?:it's|it is|they're|should (?:be|read)|correct (?:date|dates|day) (?:is|are|being)) now\b|\bshould (?:have been|be|read|say)\b
    \brescheduled (?:to|for)\b|\bceremony\b|\bgraduation\b|\bparty\b|\bawards\b
    (?<!\b(?:we|they|he|she|who) )\bget(?:s|ting)? (?:married|hitched)\b|\b(?:we|they|he|she|who) gets? married\b|\b(?:is|are|'s|'re|'m|am) (?:getting )?marr(?:ied|ying)\b|\bmarries\b|\bt(?:ies|ie|ying) the knot\b
  `,
);

/** Words that make an hour my call, but say nothing of a date: "we need you from 9:30", "need a videographer from 10". */
const you = oneOf(
  String.raw`
    \b(?:want|need|like|love|have|start|get) (?:you|u)\b(?! (?:\w+ )?(?:out|away|off|gone|done|finished|home|released|on (?:the|your) (?:road|way))\b)[^.,;]{0,25}\b(?:from|at|by|for(?= (?:\d{1,2}\b(?! ?(?:days?|hours?|hrs?|nights?|weeks?|people|mins?|minutes?|sessions?|talks?|speakers?|%))|half|quarter)))\b
    \b(?:videographer|cameraman|camera ?(?:op\w*|person)|cam op|shooter|photographer|video guy|one camera|a camera) (?:needed |wanted )?from\b
    (?=[yugco])(?<=(?:^|[,;.:(\n]|\b(?:and|but|so))\s{0,2})(?:you|u|yours|you're|you'd be|gate|camera|cameras|crew|on(?= (?:at|from)\b))(?: (?:in|on|there|here))? ?(?:at|from|by|for|:)(?=\s?(?:\d|half|noon|quarter))
    (?=i)(?<=(?:^|[\n|])\s{0,2})in\s?[:=](?=\s?(?:\d|(?:mon|tue|wed|thu|fri|sat|sun)\w{0,6},? \d))
    \byour (?:day|shift|hours|work|working day|session|slot|stint|time)(?: with us| there| here)?(?: (?:would|will|should|is|are|to|'d|'ll))* ?(?:run|runs|be|go|goes|last|lasts|start|starts|is|are)?(?: from)?(?=,? (?:about |around )?\d)
    \bcome at\b|\byou (?:came|were there|got there|could come|could be there)\b|\bmeet(?:ing)? (?:up )?(?:at|from|by|around)(?= (?:\d|half|quarter|noon|six|seven|eight|nine|ten))|\byou (?:may|can|could) (?:enter|get in|come in|start|begin|set up|place (?:the|your)|put (?:up )?(?:the|your)|install|access|arrive|load|be let in)\b|\bmeet (?:us|me|everyone) (?:at|on|in|by|outside|there|behind)\b
    (?<!\b(?:feierabend|schluss|ende|fertig|fin|einde|klaar|frei) (?:für|pour|voor) )(?:dich|sie|euch|ihnen|te|vous|lo|usted|je|jou|u)\s(?:ab|von|um|dès|à partir de|a partir de|desde|dalle|vanaf|om)(?=\s)
    \byou(?:'d| would|'ll| will| should)? (?:be needed|be required|need to (?:be|come|arrive|start|set up)|come|start|begin|get there|set up|need to be|be on)\b
  `,
);

const elsewhere = (pattern: string): RegExp => new RegExp(latin(pattern), 'gi');
const cues: readonly (readonly [Cue, RegExp])[] = [
  ['event', event],
  ['show', show],
  ['show', elsewhere(showElsewhere)],
  ['delivery', delivery],
  ['delivery', elsewhere(deliveryElsewhere)],
  ['wrap', wrap],
  ['wrap', elsewhere(wrapElsewhere)],
  ['wrap', new RegExp(wrapNamed, 'gi')],
  ['call', call],
  ['call', elsewhere(callElsewhere)],
  ['call', new RegExp(callNamed, 'gi')],
  ['call', new RegExp(callDone, 'gi')],
  ['other', other],
  ['other', elsewhere(otherElsewhere)],
  ['past', past],
  ['past', elsewhere(pastElsewhere)],
  ['reply', reply],
  ['reply', elsewhere(replyElsewhere)],
  ['reply', new RegExp(replyWanted, 'gi')],
];

/** Words for a call that say what somebody does, and so may be said of somebody else. */
const LEAVES = /^(?:leave|can leave|go home|home|depart|off|check)/i;
const DOES =
  /^(?:arriv|get|load|set|rig|turn|show|be |build|rehears|off|access(?!ible)|com(?:e|ing)|bump|in\b|move|let in|report|check|sign|unload|pull|roll|rock|pitch|swing|drop|pop|kick|muster|gather|assemble|plug|land|join|park|attend|start|begin|meet(?! you| us)|enter|sound|line|calls?$)/i;

/** "yours from" */
const GIVEN = /^(?:yours|ours) from/i;

/** "the kids have to be in bed by 8" */
const MUST = /^(?:to|must) (?=be )/i;

/** Where somebody stands or for what a hall is let: "the face painter is with us from 1", "the hall is booked from 9". */
const STANDS = /^(?:with (?:us|me)|booked|hired|on[- ]?site)\b/i;

const ofHour: typeof cues = [...cues, ['call', you], ['call', new RegExp(callOfHours, 'gi')]];

export type CueHit = { cue: Cue; start: number; end: number };

/** Longest stretch of a sentence that is searched for cues, in characters. */
export const CUE_REACH = 140;

/** A call of the crew is told from a telephone call by what follows, so a little more is looked at than the piece itself. */
const LOOK_AHEAD = 14;

/** "we'd say till 2": about then. */
const WE_SAY = /\b(?:we'd|i'd|would|let's|shall we)\s$/i;

/** "film through the toasts, say until 8:30" */
const SAY_UNTIL = /^say (?:until|till)$/i;

/** "hidden away by 5" */
const HIDDEN = /\b(?:hidden|hid|tucked|stowed|put|locked|safely|packed) $/i;

/** "not to ring before ten" */
const NOT_TO = /\b(?:not(?: to)?|don't|never|do not)\s$/i;

/** "he said he'd let me know by Friday" */
const THEY_WILL = /\b(?:he|she|they)(?:'d|'ll| would| will| was going to| were going to| promised to)\s$/i;

/** "set-up would begin at", "load-in starts": what begins is the call. */
const BEGUN =
  /^s?(?:(?: (?:would|will|should|to|can|may|might|must|could))? (?:starts?|starting|begins?|opens?|runs?)| (?:is|are|will be|has been|have been) (?:scheduled|planned|set|happening|taking place|takes place|on))$/i;

const CLOSES = /^\s(?:by|before|until|till?|(?:no|not) later than)$/i;

/** "figure on being out by 9": a word for the end of a day is nearer to its hour than one for an answer that begins before it. */
const nearer = (a: CueHit, b: CueHit): number =>
  (a.cue === 'reply') !== (b.cue === 'reply') && [a.cue, b.cue].some((cue) => cue === 'wrap' || cue === 'call') ? b.start - a.start : 0;

/** Every cue in text[from, to), offsets counted from `from`, the last first, for an hour or for a date; of two that end together the more particular one. */
export function cuesIn(text: string, from: number, to: number, ofHours = false): CueHit[] {
  const piece = text.slice(from, to + LOOK_AHEAD);
  const hits: CueHit[] = [];
  for (const [cue, pattern] of ofHours ? ofHour : cues) {
    for (const match of piece.matchAll(pattern)) {
      const end = match.index + match[0].length;
      if (from + end > to) continue;
      const named = /^\s?:/.test(piece.slice(match.index + match[0].length));
      const theirs = cue === 'call' ? DOES : cue === 'wrap' ? LEAVES : undefined;
      const deed = match[0].trim();
      const others =
        !named &&
        ((theirs?.test(deed.replace(MUST, '')) === true && doneByOthers(text, from + match.index, deed)) ||
          (cue === 'call' && STANDS.test(deed) && tellsOfElse(text, from + end)));
      const guessed =
        cue === 'reply' &&
        /^say/i.test(match[0]) &&
        (SAY_UNTIL.test(match[0]) || WE_SAY.test(piece.slice(Math.max(0, match.index - 12), match.index)));
      const hidden = cue === 'wrap' && /^away/i.test(match[0]) && HIDDEN.test(piece.slice(Math.max(0, match.index - 12), match.index));
      if (guessed || hidden) continue;
      const refused = cue === 'reply' && !/^hear/i.test(match[0]) && NOT_TO.test(piece.slice(Math.max(0, match.index - 16), match.index));
      const promised = cue === 'reply' && THEY_WILL.test(piece.slice(Math.max(0, match.index - 24), match.index));
      // "the gym would be yours from 11": what has hours of its own is mine then.
      const things = ofHours && (cue === 'wrap' || cue === 'call') && !GIVEN.test(deed) && ofOwnHours(text, from + match.index);
      hits.push({ cue: things || refused || guessed || promised ? 'other' : others ? 'show' : cue, start: match.index, end });
    }
  }
  const begun = (show: CueHit): boolean =>
    hits.some(({ cue, end }) => (cue === 'call' || cue === 'wrap') && end <= show.start && BEGUN.test(piece.slice(end, show.end)));
  // "our rules say we adjourn no later than 10": the word for the end is the nearer one.
  const nearerEnd = (reply: CueHit): boolean =>
    ofHours && hits.some(({ cue, start, end }) => cue === 'wrap' && start > reply.start && CLOSES.test(piece.slice(end, reply.end)));
  const rank = (cue: Cue): number => cues.findIndex(([name]) => name === cue);
  return hits
    .filter((hit) => (hit.cue !== 'show' && hit.cue !== 'event') || !begun(hit))
    .filter((hit) => hit.cue !== 'reply' || !nearerEnd(hit))
    .sort((a, b) => b.end - a.end || (ofHours ? nearer(a, b) : 0) || rank(b.cue) - rank(a.cue));
}
