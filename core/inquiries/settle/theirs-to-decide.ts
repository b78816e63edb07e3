/**
 * A day on which somebody decides about my offer, and which is no day of the job: "the council has a meeting on Thursday 10 February, and I need your
 * answer the day before", "le conseil d'administration l'examinera le 2 avril". A meeting that is to be filmed has no word for an offer or an answer beside it.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import type { Where } from './scene.ts';

const BODY = anyOf(`
  board/committee/council/trustees/panel/members/management/directors/partners/bosses/boss/treasurer/client/clients/jury/syndicate/assembly/presidium
  vorstand/gremium/ausschuss/gemeinderat/geschäftsführung/direktion/magistrat/beirat/kuratorium/stiftungsrat | conseil/bureau/comité/direction/jury | junta/consejo/comité/dirección/directiva | consiglio/direttivo/comitato/giunta/direzione | bestuur/directie/commissie/raad/college
`);
const DECIDES = anyOf(`
  meets/meet/meeting/sits/sit/votes/vote/decides/decide/deciding/discusses/discuss/considers/consider/chooses/choose/examines/examine/approves/approve | looks/look at | goes through | signs off | make/makes/making up their minds | gathers/gather/comes/come together
  tagt/entscheidet/berät/beschließt/beschliesst/sitzung | trifft sich | examine/examinera/décide/décidera/tranche/tranchera/statue/statuera/étudie/étudiera | se réunit | se reúne | decide/decidirá/decidono/deciderà/valora/valorará/examina/esamina | si riunisce | vergadert/beslist/besluit/bespreekt/vergadering | komt bijeen
`);
const OFFER = anyOf(`
  answer/reply/price/quote/offer/estimate/figure/figures/decision/budget/word/proposal/costs | the day before | day before that | beforehand | before then | by then
  antwort/angebot/preis/zusage/bescheid/kostenvoranschlag | devis/réponse/offre/prix/tarif | la veille | presupuesto/respuesta/oferta/precio | el día antes/anterior | preventivo/risposta/offerta/prezzo | il giorno prima | offerte/antwoord/prijs/prijsopgave | de dag ervoor
`);
/** The meeting itself is the job. */
const FILMED =
  /(?<!\p{L})(?:film|record|cover|stream|livestream|shoot|captur|video|camera|kamera|cámara|caméra|grabar|captation|opname)\p{L}*(?!\p{L})/iu;
const LEAD = 90;
const TAIL = 110;

/** True for a day whose sentence says that a body decides on it, with a word for what it decides on there or right behind. */
export function theirsToDecide(text: string, { start, end }: Where): boolean {
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(Math.max(sentence.start, start - LEAD), start);
  const rest = text.slice(end, Math.min(text.length, end + TAIL));
  return (
    !FILMED.test(lead) &&
    BODY.test(lead) &&
    DECIDES.test(`${lead} ${text.slice(end, Math.min(sentence.end, end + TAIL))}`) &&
    OFFER.test(`${lead} ${rest}`)
  );
}
