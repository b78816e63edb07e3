/**
 * What is said in other languages of somebody who may go: "er du færdig", "mag je naar huis", "vous serez donc libéré", "se puede ir". Verb and
 * person stand in either order there, so that one list serves behind an hour, behind a clause after it, and before it.
 */

/** A few small words that do not matter. */
const FEW = String.raw`(?: [^\s.,;:!?()\d]{1,14}){0,7}`;
const either = (...orders: string[]): string => `(?:${orders.join('|')})`;

const GERMAN = [
  String.raw`${either('(?:bist|wärst|wirst) du', '(?:sind|wären|werden) sie', '(?:seid|werdet) ihr', 'du (?:bist|wärst|wirst)', 'sie (?:sind|wären|werden)', 'ist (?:ihr|dein|euer|der) (?:einsatz|dienst|job|tag)', '(?:ihr|dein|euer) (?:einsatz|dienst|job|tag) (?:ist|wäre)', 'ist (?:ihre|deine|eure|die) (?:arbeit|schicht)')}${FEW} (?:frei|fertig|entlassen|durch|erlöst|raus|beendet|zu ende|vorbei|getan|geschafft)`,
  String.raw`${either('(?:kannst|darfst|könntest) du', '(?:können|dürfen|könnten) sie', '(?:könnt|dürft) ihr', 'du (?:kannst|darfst|könntest)', 'sie (?:können|dürfen|könnten)')}${FEW} (?:gehen|heim|heimfahren|heimgehen|nach hause|abbauen|abhauen|los|weg|losfahren|schlafen|aufbrechen|einpacken|zusammenpacken|verschwinden)`,
];
const DUTCH = [
  String.raw`${either('(?:ben|bent|kun|kan|kunt|mag) (?:je|jij|u|jullie)', '(?:je|jij|u) (?:ben|bent|kan|kunt|mag)')}${FEW} (?:klaar|vrij|weg|gaan|naar huis(?! (?:bellen|mailen))|naar bed|inpakken|vertrekken|opbreken|ervandoor)`,
];
const FRENCH = [
  String.raw`${either('(?:vous|tu) (?:êtes|es|serez|seras|seriez|serais)', '(?:êtes|serez)-vous', '(?:es|seras)-tu')}${FEW} (?:libres?|libérée?s?|dispensée?s?|quittes?)`,
  String.raw`(?:vous|tu) (?:pouvez|peux|pourrez|pourras|pourriez|pourrais)${FEW} (?:partir|repartir|filer|rentrer|y aller|vous en aller|t'en aller|plier|remballer|ranger|démonter|prendre (?:le|votre|ton))`,
  String.raw`(?:on|je|nous) (?:vous|te|t') ?(?:libère|libérons|libérerai|libérera|rend|laisse)(?: (?:partir|filer|votre liberté|ta liberté|rentrer))?`,
];
const SPANISH = [
  String.raw`(?:queda|quedas|quedás|quedaría|quedarías|estás|está|estarás|eres|sos|es)${FEW} (?:libres?|liberad[oa]s?|despachad[oa]|desocupad[oa])`,
  String.raw`(?:(?:se|te) (?:puede|puedes|podés|podrá|podrás|podría|podrías)|(?:puede|puedes|podés|podrá|podrás))(?: usted| ya)? (?:ir|irse|irte|marchar|marcharse|marcharte|retirar|retirarse|retirarte|descansar|recoger)`,
  String.raw`(?:ya )?te vas`,
];
const ITALIAN = [
  String.raw`(?:è|sei|sarà|sarai|saresti|sarebbe)${FEW} (?:liber[oa]|congedat[oa])`,
  String.raw`(?:può|puoi|potrà|potrai|potrebbe|potresti)${FEW} (?:andare|andar via|andarsene|andartene|ripartire|smontare|tornare|prendere (?:il|la|l'))`,
];
const PORTUGUESE = [
  String.raw`(?:está|estás|fica|ficas|estará|estarás|ficará)${FEW} (?:livres?|liberad[oa]|despachad[oa]|dispensad[oa]|liberto)`,
  String.raw`(?:pode|podes|poderá|poderás)${FEW} (?:ir|ir embora|sair|arrumar|descansar|voltar)`,
];
const NORDIC = [
  String.raw`${either('(?:är|er|bliver|blir) (?:du|ni|dere|i)', '(?:du|ni|dere) (?:är|er|bliver|blir)')}${FEW} (?:ledig|fri|klar|färdig|ferdig|færdig)`,
  String.raw`${either('(?:kan|får|må) (?:du|ni|dere)', '(?:du|ni|dere) (?:kan|får|må)')}${FEW} (?:gå|åka|dra|reise|packa|pakke|køre|kjøre|sova|tage hjem|ta tåget|gå hjem)`,
  String.raw`(?:behöver|trenger|behøver)${FEW} (?:dig|deg|dere|er) (?:inte|ikke)`,
  String.raw`(?:olet vapaa|voit lähteä)`,
];

/** Somebody is let go, in another language than English; as the source of a pattern for the flag `i`. */
export const LEAVING_ABROAD = String.raw`(?<![\w\u00c0-\u024f'])(?:${[...GERMAN, ...DUTCH, ...FRENCH, ...SPANISH, ...ITALIAN, ...PORTUGUESE, ...NORDIC].join('|')})(?![\w\u00c0-\u024f])`;
