/**
 * What is asked of me: cameras, second camera, mixing, streaming, photographs, sound, an edit of pictures that exist.
 */
import type { Role } from '../../contract/parts.ts';

export type RoleHit = { role: Role; start: number; end: number; text: string };

const particular: readonly (readonly [Role, RegExp])[] = [
  [
    'second camera',
    /\b(?:(?:second|2nd|extra|additional|third|3rd|another|b)[- ](?:op|camera|cam|shooter|cameraman|cameraperson|camera ?operator|videographer|operator|angle)s?\b(?: op(?:erator)?s?\b)?|b[- ]cam(?:era)?\b(?: op(?:erator)?)?|cam(?:era)? (?:two|2|b)\b|second shoot(?:ing)?|2nd shoot(?:er|ing)?|second pair of hands on camera|zweite[rns]? (?:kamera|mann an der kamera)|kamera (?:2|zwei)|2\. kamera|deuxième cadreu\w*|caméra (?:2|b)|cámara (?:2|b)|camera (?:due|twee)|2e camera|(?:deuxième|seconde|2e) (?:caméra|cadreu\w+)|segunda cámara|seconda camera|tweede camera)/gi,
  ],
  [
    'vision mixing',
    /\b(?:vision[- ]?mix(?:er|ing|es)?(?: op(?:erator)?)?|video mix(?:er|ing)|(?:run|operate|drive|man|on|work|handle|do|manning|running|operating) the (?:video |vision )?(?:mixer|switcher|desk and cut)|switcher(?: op(?:erator)?)?|switch (?:the )?(?:show|cameras|between|live)|switch (?:for|the|a|our|it)|(?:can|could|would|will) you switch|direct[- ]switch\w*|direct-switch (?:a|the)|tech(?:nical)? director|(?:a|our|the|need|as|your) td\b|td (?:the|a|an|our|for|needed|wanted)|(?:live )?(?:camera |video )?switching|technical direct(?:or|ing)|td the|mix (?:the |a |our )?(?:show|cameras|pictures|vision)|bildmisch\w*|bildregie|videoregie|régie(?: vidéo)?|mélangeur|mixage vidéo|réalisateur|realizador\w*|mezclador\w*|regia video|mixer video|regista|regie|beeldmenger|beeldregie|schakel\w*|mixing (?:job|gig)|screen mix|you switch|am mischer|vision (?:job|gig)|can (?:u|you) td)\b/gi,
  ],
  [
    'livestream',
    /\b(?:live[- ]?stream(?:ing|ed|er|s)?|live streaming|stream (?:it|this|the|our|to|live|everything|both|all|from|each|every|a|\d|two|three|four)|live (?:übertragen|übertragung)|übertragung|en direct|en directo|in diretta|diffusion en direct|retransmi\w*|diretta streaming|streaming|streamed|webcast(?:ing)?|stream(?= (?:of|for|op)\b)|live feed|go(?:ing)? (?:out )?live (?:on|to)|broadcast (?:it |this )?live|hybrid (?:event|meeting|conference)|streamer)\b/gi,
  ],
  [
    'edit only',
    /\b(?:(?:doco|documentary|film|video) edit\b|edit(?:ing)?[- ](?:only|gig|job|work)|(?:can|could|would|will) you (?:please )?(?:edit|cut)\b|(?:editor|cutter) (?:needed|wanted)|post[- ]only|only (?:need |want )?(?:the )?edit(?:ing|ed)?\b|just (?:need |want |the )?(?:an? |the )?edit(?:or|ing)?\b|no filming(?: needed| required)?|nothing to (?:film|shoot)|no shooting|(?:someone|an editor|you) to (?:edit|cut)|need an editor|(?:looking for|seeking|want|wanting) (?:an |a )?(?:editor|cutter)|edit (?:our|my|the|some|existing) (?:existing |own |old )?(?:footage|rushes|recordings?|material)|(?:footage|rushes|it|everything)(?: is| was|'s| has been)? already (?:been )?(?:shot|filmed|recorded|in the can))\b/gi,
  ],
  [
    'photo',
    /\b(?:shoot(?:ing)? (?:stills|photos)|photograph(?:e|er|y|s|ers|ing)?|fotos?|fotograaf|togs?|photogs?|photos?|photo ?shoot|stills|pics|headshots?|pictures of|fotograf\w*)\b/gi,
  ],
  [
    'audio',
    /\b(?:sound (?:recordist|mixer|op(?:erator)?|engineer|person|guy|tech(?:nician)?|recording)|audio (?:only|for|op(?:erator)?|engineer|recordist|tech(?:nician)?|recording|mixing|mixer|person)|boom op(?:erator)?|need (?:audio|sound)|sound recorded|audio mixer|(?:hand|help|someone|person|you) (?:on|for|with) (?:audio|sound)|sound for|(?:record|mix|do|run) (?:the )?(?:sound|audio)|(?:be |was |going to be |doing |on )(?:on )?(?:the )?(?:audio|sound)(?= ?[.,;!?]|$)|location sound|foh|(?<=[:.] )audio(?=[.,;]|$)|sound only|just (?:sound|audio)|prise de son|ingénieur du son|preneu[rs]e? de son|perch(?:man|iste)|sonidista|(?:für|am|beim|den) ton(?=[.,;!?]|$)|(?:den )?ton auf(?:nehmen|zeichnen|nahme)|técnico de sonido|tonico|fonico|geluidsman|geluid|ton(?:aufnahme|assistent)|a1|tonmann|tonmeister)\b/gi,
  ],
  [
    'other',
    /\b(?:drone (?:op(?:erator)?|pilot|footage|shots|work|flying|filming|video)|fly (?:a|the|your) drone|(?:with|have|own|need) (?:a|your) drone|teleprompter(?: op(?:erator)?)?|autocue(?: op(?:erator)?)?|prompter op|gaffer|lighting (?:op(?:erator)?|tech(?:nician)?|designer|engineer|person)|key grip|production assistant|graphics op(?:erator)?|playback op(?:erator)?|camera assistant|focus puller|1st ac|first ac|2nd ac|video tech(?:nician)?|projection(?:ist)?|slides op(?:erator)?|stage manager|shader|jib op(?:erator)?|replay op(?:erator)?)\b/gi,
  ],
];
const shoot =
  /\b(?:film(?:ing|ed|maker)?|camo op|(?:an?|one|two|another|need) ops?|(?:promo |video )footage|footage of|hours? of footage|cover(?= (?:our|the|a|an|my|it|this|some)\b)|coverage|shoot(?:ing)?|shooter|videograph(?:er|y|ers)|video ?(?:crew|coverage|person|guy|recording|shoot|team|production)|camera ?(?:op(?:erator)?s?|man|men|woman|person|people|crew|work)?s?|cam ops?|cam|cam [abc1-4]\b|record(?:ing|ed)?|captur(?:e|ing|ed)|videos?|videotap\w*|taped|taping (?:of|our|the)|(?:to|you|and|please) tape|tape (?:our|the|this|it|a|my)|videoing|vid|dops?|dps?(?= (?:needed|wanted|for|on|in|who)\b)|(?:a|need|our) dp|b-?roll|long lens|(?:promo|video|film) shot|operatore video|eng crew|gimbal(?: op(?:erator)?)?|ptz(?: op(?:erator)?)?|cinematograph\w*|lighting camera\w*|videogs?|vidgrapher|vgrapher|operating|kameramann|kamerafrau|kamera|filmen|filmt|filmst|gefilmt|mitfilmen|aufnehmen|aufzeichnen|aufzunehmen|filmer|filmez|filmé|filmeren|gefilmd|rodaje|rodar|riprendere|filmar|vidéaste|cadreur|filmar|(?:highlights?|sizzle) reels?|recaps?(?= (?:of|video|film|reel|in|by|for|at)\b)|after-?movie|camarógrafo|videógrafo|operatore|riprese|cameraman|aufzeichnung|videograf\w*|videoaufnahmen?|dreh|filmer|tournage|captation|caméra|cadreuse|grabar|grabación|filmación|cámara|videomaker|filmare|gravar|filmagem|cinegrafista)\b/gi;

const NOT_WANTED =
  /(?:(?<!\p{L})(?:nicht|kein|keine|keinen|pas de|sin|geen|déjà (?:son|un|une|notre|leur)|schon (?:ein|eine|einen)|bereits (?:ein|eine|einen)|ya (?:tenemos|hay)|n'est pas|with another|no|not|without|don't need|do not need|doesn't need|don't want|won't need|not need|no need for|already (?:have|got|booked|hired|sorted)|have (?:got )?(?:a|an|our|someone|two|already)|we've got|we have|has (?:a|its|their)|there(?:'s| is| are| will be)|hired|booked|our own|in-house|our|another|separate|with (?:a|the|our|your|their)|next to (?:a|the)|alongside|besides|join(?:ing)? (?:a|our|the)|instead of|rather than|the|house|their|lost (?:our|the)|work(?:ing)? with|beside|plus a|meet(?:ing)? (?:the|our))(?: \w+){0,2} ?)$/iu;
const LOST_ONE =
  /\b(?:lost|replace|replacement|replacing|dropped out|fell ill|fell through|pulled out|cancelled on us|sick|let us down|cover for|fill in|stand in|in place of|bailed|no longer|can't make it|injured|tested positive|ill|quit|went under|no-show|(?:is|are|was) (?:out|off)|laid up|called (?:out|off|in)|down with|fallen|fell|unwell|flu|covid|stuck|double-booked)\b/i;
const HANDLED =
  /^(?:[^.;!?()\n]{0,40}\b(?:is|are|will be|has been|have been|'s) (?:already )?(?:handled|sorted|covered|taken care|booked|done|hired|arranged|not needed|on board)|s? ?(?:is|are) (?:already )?(?:booked|sorted|covered))/i;

const NEGATED = /(?:\b(?:no|without|not|never|nicht|kein|keine|pas de|sin|geen)|n't)(?: (?:need|have|want)(?: to)?)? $/i;
/** "photos at 4" is a line of the programme. */
const SCHEDULED = /^ (?:at|from|until|till) \d/i;
const GEAR = /^ (?:rentals?|call|meeting|conferenc\w*|game|wall|link|footage (?:from|of)|card)/i;

/** Verbs that make "the livestream" or "our autocue operator" the thing that is asked for. */
const ASKED_FOR =
  /\b(?:run|do|operate|handle|manage|mix|man|be|as|need|needs|want|book|hire|after|seeking|looking for|act as|us with|with) (?:(?:the|our|a|an|your|my) )?(?:\w+ )?$/i;

const CAN_YOU = /\b(?:do you have|someone who|who can|able to|can you|could you|would you)\b[^.;,]{0,30}$/i;

function wanted(text: string, start: number, end: number, role: Role): boolean {
  const sentence =
    text
      .slice(Math.max(0, start - 90), start)
      .split(/[.;!?\n]/)
      .at(-1) ?? '';
  const after = text.slice(end, end + 70);
  if (HANDLED.test(after) || SCHEDULED.test(after)) return false;
  if (LOST_ONE.test(sentence) || LOST_ONE.test(after.split(/[.;!?\n]/)[0] ?? '')) return true;
  if (role === 'edit only') return true;
  if (/\b(?:no|not|without) $/i.test(sentence)) return false;
  if (CAN_YOU.test(sentence)) return true;
  if (ASKED_FOR.test(sentence) && !/\b(?:with|already|have) (?:a|an|our|the) (?:\w+ )?$/i.test(sentence)) return true;
  return !NOT_WANTED.test(sentence);
}

/** Roles that are asked for, each once, the particular before the general; and where. */
export function rolesIn(text: string): RoleHit[] {
  const hits = new Map<Role, RoleHit>();
  for (const [role, pattern] of particular) {
    for (const match of text.matchAll(pattern)) {
      const [start, end] = [match.index, match.index + match[0].length];
      if (hits.has(role) || !wanted(text, start, end, role)) continue;
      hits.set(role, { role, start, end, text: match[0] });
    }
  }
  for (const match of text.matchAll(shoot)) {
    const [start, end] = [match.index, match.index + match[0].length];
    const inside = [...hits.values()].some((hit) => start < hit.end && end > hit.start);
    if (
      inside ||
      hits.has('shoot') ||
      NEGATED.test(text.slice(Math.max(0, start - 24), start)) ||
      HANDLED.test(text.slice(end, end + 70)) ||
      GEAR.test(text.slice(end, end + 20))
    )
      continue;
    hits.set('shoot', { role: 'shoot', start, end, text: match[0] });
  }
  return [...hits.values()];
}

const ASKED =
  /\b(?:need|needs|want|looking for|require|hire|book|free to|available to|can you|could you|able to|interested in|after|seeking|be our|as (?:a|our|the)|for (?:a|the)|to|someone to|would you)\b/i;

/** "You are sound recordist", "you'd be our switcher" */
const YOU_ARE = /\byou(?:'d be| would be| are|'re|'ll be| will be)(?: doing| on| running)?(?: the| our| my| a| an)? $/i;

/** Every word for filming in the text. */
const filmWords = (text: string): string => [...text.matchAll(shoot)].map((match) => match[0]).join(' ');

/** What is to be handed over says little of who is asked for. */
const HANDED_OVER = /\bdeliverables?\s?[:=-][^\n.]*/gi;

/** A line that says what is asked: "Role: Location sound". */
const LABELLED =
  /^[^\S\n]*(?:role|position|position needed|crew position|job title|requirement|service|services|service required|you are|funktion|poste|puesto|functie)[^\S\n]?[:=]([^\n]{3,80})$/gim;

/** The one role that a message asks for; more than one where it cannot be told. */
export function roleAsked(message: string): RoleHit[] {
  const text = message.replace(HANDED_OVER, (listed) => ' '.repeat(listed.length));
  const labelled = [...text.matchAll(LABELLED)].flatMap((line) =>
    rolesIn(line[1] ?? '').map((hit) => ({
      ...hit,
      start: hit.start + line.index + line[0].lastIndexOf(line[1] ?? ''),
      end: hit.end + line.index + line[0].lastIndexOf(line[1] ?? ''),
    })),
  );
  const named = new Set(labelled.map(({ role }) => role));
  if (named.size === 1) return labelled.slice(0, 1);
  const hits = rolesIn(text);
  const told = hits.find(({ start, role }) => role !== 'shoot' && YOU_ARE.test(text.slice(Math.max(0, start - 24), start)));
  if (told) return [told];
  const general = hits.find(({ role }) => role === 'shoot');
  const special = hits.filter(({ role }) => role !== 'shoot');
  if (special.length === 0) return general ? [general] : [];
  const strong = special.filter(({ role }) => role === 'second camera' || role === 'vision mixing' || role === 'edit only');
  if (strong.length === 1) return strong;
  if (strong.length > 1) {
    const asked = strong.filter((hit) =>
      ASKED.test(
        text
          .slice(Math.max(0, hit.start - 60), hit.start)
          .split(/[.;!?\n]/)
          .at(-1) ?? '',
      ),
    );
    return asked.length === 1 ? asked : strong;
  }
  // "film and photograph", "record and stream": two trades that one person may or may not do at once.
  const filming =
    general &&
    /\b(?:film(?:ing)?|videograph(?:er|y)|shoot|record(?:ing)?|camera ?(?:op(?:erator)?s?|man|person)|cover|video)\b/i.test(
      filmWords(text),
    );
  if (filming && special.length >= 1) return [general, ...special];
  return special;
}
