/**
 * Who is to be answered where that is not who writes: "Talk to Mossie Considine directly", "my mate Kayleigh is after someone ... her number is".
 */
import { KIN_WORDS, NAME, nameFrom, TITLE_WORDS, type PersonFact } from './words.ts';

const NAMED = NAME.replaceAll(String.raw`\s`, ' ');
const DIRECTLY = '(?:directly|direct|directamente|directement|direkt|rechtstreeks|direttamente)';
const ANSWER = 'talk speak write reply respond answer contact ring call phone text e-?mail mail message reach deal go'
  .split(' ')
  .map((verb) => `[${verb.charAt(0).toUpperCase()}${verb.charAt(0)}]${verb.slice(1)}`)
  .join('|');
const TO = [
  String.raw`(?<!\p{L})(?:${ANSWER}|[Gg]et in touch|[Gg]et back)(?: back)?(?: to| with)?(?: (?:the|my|our) \p{Ll}+,?)? (${NAMED})(?: \p{Ll}+)?,? ${DIRECTLY}(?!\p{L})`,
  String.raw`(?<!\p{L})${DIRECTLY}(?: (?:to|with|at|a|con|à|an|aan))?:? (${NAMED})(?=[,.:;!\n]| (?:at|on|via|en|al|unter|op|au)(?!\p{L})| ?[(+\d]|$)`,
  // "Reply to Annika (she's the client)", "answer Moira, not me"
  String.raw`(?<!\p{L})(?:${ANSWER})(?: back)?(?: to| with)? (${NAMED})(?:,? (?:please )?\(?(?:[Ss]he|[Hh]e|[Tt]hey)(?:'s|'re| is| are) (?:the|our|your) (?:client|customer|one|boss|organi[sz]er)|,? (?:and )?not (?:to |with )?me(?!\p{L}))`,
  // "ring her, not me: Bernadette Quill"
  String.raw`(?<!\p{L})(?:her|him|them),? (?:and )?not me(?:,? please)?[:,-]{1,2} (?:it's |that's )?(${NAMED})(?=[,.:;!\n(]| (?:at|on)(?!\p{L})| ?[(+\d]|$)`,
  // "She is the one to ask for, please: Greta Zinck, 902-..."
  String.raw`(?<!\p{L})(?:[Ss]he|[Hh]e|[Tt]hey)(?:'s|'re| is| are) (?:the (?:one|person|lady|man)|who) (?:to|you should) (?:ask for|call|talk to|contact|ring|speak to|write to|answer|reply to|deal with)(?:,? please)?[:,-] ?(${NAMED})(?=[,.;!\n(]| (?:at|on)(?!\p{L})| ?[(+\d])`,
  // "Reply to Wiremu please, wiremu@..."
  String.raw`(?<!\p{L})(?:(?:[Rr]eply|[Rr]espond|[Aa]nswers?|[Rr]eplies|RSVP)(?: back)? to|[Mm]eld dich bei|[Aa]ntwort an) (${NAMED})(?: please| bitte)?(?:,|:| at| on| -)? (?:at |on )?[(<]?(?:[\w.+-]+@|\+?\d[\d ().-]{6})`,
].map((pattern) => new RegExp(pattern, 'gu'));
/** Somebody of the writer's, of whom it is said what they want, and then how to reach that one. */
const KIN = new RegExp(
  String.raw`(?<!\p{L})(?:[Mm]y|[Oo]ur|[Mm]i|[Mm]eine?|[Mm]on|[Mm]a|[Mm]ijn) (?:\p{Ll}+ )?(?:${KIN_WORDS}),? (${NAMED})(?!\p{L})`,
  'gu',
);
const ASKS =
  /^,?(?: \p{L}+){0,4}? (?:is|'s|are|was) (?:after|looking|hoping|getting|having|planning|organi[sz]ing|in need|short|throwing|hosting)|^,?(?: \p{L}+){0,2}? (?:wants?|needs?|would (?:like|love)|asked|wonder\p{L}*|sucht|braucht|möchte|busca|necesita|quiere|cherche|voudrait|zoekt|wil|heiratet)(?!\p{L})/iu;
const FOR = /(?<!\p{L})(?:for|from|behalf of|it's|für|para|pour|voor) $/iu;
const REACHED =
  /(?<!(?:not|n't|nt|never) )(?<!\p{L})(?:(?:her|his|their) (?:number|no|mobile|cell|phone|e-?mail|mail|address)(?:'s| is|:)|(?:text|ring|call|phone|e-?mail|message|write to|contact|reply to|ask) (?:her|him|them)(?! (?:if|about|to|know)(?!\p{L}))|(?:su|sus) (?:número|correo|teléfono) es|(?:ihre|seine) nummer ist|(?:haar|zijn) nummer is|son (?:numéro|mail) (?:est|:)|schreib(?:en sie)? (?:ihr|ihm)|escríb[ea]le|écris-lui|écrivez-lui|mail (?:haar|hem))(?!\p{L})/iu;

/** The other who is to be answered; without a name where one is meant and several may be. */
export function directedTo(text: string, writer: string | undefined): { name?: PersonFact } | undefined {
  const isOther = (name: PersonFact | undefined): name is PersonFact =>
    name !== undefined && !TITLE_WORDS.test(name.value) && name.value.split(' ')[0] !== writer?.split(' ')[0];
  for (const pattern of TO)
    for (const found of text.matchAll(pattern)) {
      const written = found[1] ?? '';
      const name = nameFrom(written, found.index + found[0].lastIndexOf(written));
      if (isOther(name)) return { name };
    }
  if (!REACHED.test(text)) return undefined;
  const kin = [...text.matchAll(KIN)]
    .filter(({ index, 0: { length } }) => {
      const end = index + length;
      return ASKS.test(text.slice(end, end + 60)) || FOR.test(text.slice(Math.max(0, index - 12), index));
    })
    .map((found) => nameFrom(found[1] ?? '', found.index + found[0].lastIndexOf(found[1] ?? '')))
    .filter((name) => isOther(name));
  const [first] = kin;
  return first && (new Set(kin.map(({ value }) => value)).size === 1 ? { name: first } : {});
}
