/**
 * What a machine says or sends: an answering machine, a reminder of an appointment, a mailing list of another country.
 */
import { anyOf } from './phrases.ts';

/** Sent by no person, in the words of several languages. */
const SENT = anyOf(`
  automatic/automated message/notification/response/reply/e-mail/email/mail/answer/reminder | do not answer/respond/reply | acknowledge receipt of your | accusons réception | message/réponse/courriel/mail/e-mail automatique | ne pas répondre | ne répondez pas | absence du bureau
  automatische antwort/nachricht/benachrichtigung/e-mail/mail | automatisch erstellt*/generiert*/versendet*/erzeugt* | abwesenheitsnotiz | abwesenheitsmeldung | respuesta/mensaje/correo automático/automática | no responda/responder | fuera de la oficina | risposta/messaggio automatico/automatica | non rispondere | automatisch antwoord/bericht | niet beantwoorden | resposta/mensagem automática
  unsubscribe | darse/darte de baja | cancelar la suscripción | no quieres/desea recibir | newsletter abbestellen/abmelden | abbestellen | désabonner | désinscrire | ne plus recevoir | annulla iscrizione | disiscriver* | cancellarti | afmelden voor/van | uitschrijven
  boletín de | infolettre | lettre d'information | rundbrief | nieuwsbrief | vereinsblatt
`);
/** What an answering machine says to whoever rings, and what a practice or a garage sends to whoever is due. */
const ANSWERS = anyOf(`
  thanks/thank_you for calling the/our/us/at | you've/you_have/you have reached the/our/us | leave/record a/your? message/name_and_number ... after/at the tone/beep/signal | after the tone/beep/signal | your call is/will ... important/recorded/answered/connected/returned/queued/queue/monitored/valued | press one/two/1/2/0 for/to | nachricht ... nach dem signalton | laissez un/votre message | deje su mensaje
  you have an appointment | you've an appointment | your next/upcoming? appointment/check-up/checkup | appointment reminder | reminder of/from your? appointment | reminder: your | reminder from | missed appointment/appointments | terminerinnerung | ihr termin bei uns | rappel de votre? rendez-vous | recordatorio de su/tu? cita | afspraakherinnering | promemoria appuntamento
`);
/** A form of a website sends on what somebody asks of me, with a machine's foot below it. */
const FORM = anyOf(`
  new/website/web/online/contact enquiry/inquiry/lead/booking_request/form_submission | new message/request/submission from/via/through your/the web-site/website/site/contact_form/form/page | contact/enquiry/inquiry/booking form | via/through/from your web-site/website/site | neue anfrage | nouvelle demande | nueva consulta/solicitud | nieuwe aanvraag | nuova richiesta
`);

/** True for what a machine sent by itself. */
export const sentByMachine = (whole: string): boolean => SENT.test(whole);
/** True where a machine hands on what a person asks. */
export const handsOnForm = (whole: string): boolean => FORM.test(whole);

/** True for the words of an answering machine or of a reminder to a patient or a customer. */
export const answersByMachine = (body: string): boolean => ANSWERS.test(body);
