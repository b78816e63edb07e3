/**
 * What follows an hour and says whose it is, in German, French, Spanish, Italian and Dutch, and in the English of those who think in them:
 * "um 12.30 Uhr dort sein", "ab 22 Uhr brauchen wir Sie nicht mehr", "à 16h30 c'est plié", "alle 19 abbiamo finito", "at 20:00 we let you go".
 */

/** Letters of the Latin scripts as ranges: classes of all letters make long patterns slow to build. */
const LETTER = String.raw`[\w\u00c0-\u024f]`;
const [FROM_HERE, TO_HERE] = [`(?<!${LETTER})`, `(?!${LETTER})`];
/** Up to so many words that do not matter, none of which ends a clause. */
const words = (most: number): string => String.raw`(?: [^\s.,;:!?()\d]{1,16}){0,${most}}`;
const listed = (list: string): string =>
  list
    .trim()
    .split(/\s+\|\s+|\s*\n\s*/)
    .filter((one) => one !== '')
    .join('|');
const afterHour = (list: string): RegExp =>
  new RegExp(String.raw`^\)?,?(?: (?:dann|aber|dus|dan|luego|ya|poi|già|donc|also|already))? (?:${listed(list)})${TO_HERE}`, 'i');

const YOU_DE = '(?:du|sie|ihr|dich|euch|ihnen)';
const CALL_AFTER = afterHour(`
  (?:bitte |schon |wieder )?(?:dort|da|hier|vor ort|anwesend|bereit|startklar|parat|dabei|drin|am platz)(?: zu)? sein | (?:am|im|beim|bei|in der|auf dem|auf der|vor dem|vor der|an der)${words(3)} (?:sein|stehen|erscheinen|eintreffen|einfinden)
  (?:erwarten|bräuchten|brauchen) wir ${YOU_DE}(?! (?:nicht|keine|dann nicht|nur noch)) | treffen wir uns | (?:können|könnten|dürfen) sie (?:rein|hinein|herein|aufbauen|einrichten|in (?:den|die|das)|kommen) | (?:kannst|könntest|darfst) du (?:rein|hinein|aufbauen|einrichten|in (?:den|die|das)|kommen)
  (?:geht|ginge) es für ${YOU_DE} los | geht's für ${YOU_DE} los | wären sie ${words(2)}(?:da|vor ort) | wird (?:gestellt|aufgebaut|eingerichtet|eingeleuchtet)
  on (?:vous|t') ?attend | je (?:vous|t') ?attends | il (?:faut|faudra|faudrait) être | (?:vous pouvez|tu peux|vous pourrez|tu pourras) (?:entrer|vous installer|t'installer|venir|accéder) | vous (?:êtes|serez) (?:attendue?s?|sur place|là) | (?:devant|à) (?:la|le|l')${words(3)} pour (?:vous|toi)
  (?:te|le|la|os|les) (?:espero|esperamos|esperan) | (?:tienes|tiene|tenéis|tendría|tendrías|hay|habría|debería|deberías)(?: usted)? que estar | (?:debe|debes|debería|deberías)(?: usted)? estar | nos vemos | quedamos | (?:puedes|puede|podrías|podría)(?: usted)? (?:entrar|montar|venir)
  (?:ti|la|vi) (?:aspetto|aspettiamo|aspettano) | (?:devi|deve|dovrebbe|dovresti) (?:essere|trovarsi|arrivare) | ci (?:vediamo|troviamo) | (?:puoi|può|potrebbe|potresti) (?:entrare|montare|arrivare)
  (?:moet|moeten|zou|zouden) (?:je|jij|u|jullie) er (?:zijn|moeten zijn|moeten staan|staan) | (?:er )?(?:moeten )?(?:zijn|staan) en | (?:verwachten|verwacht) (?:we|wij|ik) (?:je|jou|u) | word je verwacht | wordt u verwacht | (?:kun|kunt|kan|mag) (?:je|jij|u) (?:erin|binnen|naar binnen|terecht|opbouwen|inladen) | binnen(?=\\s?[.,;)\\n]|$| en | om ) | terecht
  (?:moeten|zou moeten) (?:staan|zijn) | er (?:zijn|staan)(?=\\s?[.,;()\\n]|$| om | want | en )
`);
const WRAP_AFTER = afterHour(`
  (?:brauchen|benötigen) wir ${YOU_DE} (?:dann )?nicht mehr | (?:werden|wirst) ${YOU_DE} nicht mehr (?:gebraucht|benötigt) | (?:können|könnten|dürfen) sie (?:dann )?(?:wieder )?(?:gehen|heim|heimfahren|heimgehen|nach hause|abbauen|einpacken|zusammenpacken|losfahren|aufbrechen)
  (?:kannst|könntest|darfst) du (?:dann )?(?:wieder )?(?:gehen|heim|heimfahren|heimgehen|nach hause|abbauen|einpacken|zusammenpacken|abhauen|los|losfahren) | (?:lassen|entlassen) wir ${YOU_DE} | (?:sind|wären) sie (?:dann )?(?:wieder )?(?:frei|fertig|entlassen|durch|erlöst|raus) | (?:bist|wärst) du (?:dann )?(?:wieder )?(?:frei|fertig|entlassen|durch|erlöst|raus)
  (?:ist|wäre) (?:dann )?(?:für (?:sie|dich|uns|alle) )?(?:schluss|feierabend|ende|zapfenstreich) | ist (?:alles|das ganze) (?:vorbei|abgebaut|zu ende) | (?:endet|enden)${words(2)} (?:ihr|dein) (?:einsatz|dienst)
  c'est (?:plié|fini|terminé|bouclé|la fin)(?! pour (?:le|la|les|eux)) | (?:vous êtes|tu es|vous serez|tu seras) (?:libre|libéré\\w*) | (?:tu peux|vous pouvez|tu pourras|vous pourrez) (?:filer|partir|repartir|rentrer|remballer|y aller|plier) | (?:vous filez|tu files|on remballe|on plie) | (?:on|je|nous) (?:vous|te) (?:libère|libérerai|libérons|libérera|laisse) | (?:votre|ta) (?:mission|journée|présence) (?:s'arrête|se termine|s'achève|finit) | tout (?:est|sera) (?:fini|plié|terminé|bouclé)
  (?:hemos|habremos|habéis|habrás|has) (?:terminado|acabado) | (?:quedas?|quedaría|quedarías|eres|estás|está)(?: usted)? libres? | (?:te puedes|se puede|puedes|puede|podrás|podrá)(?: usted)? (?:ir|irte|irse|marchar|marcharte|marcharse|recoger) | (?:terminas|acabas|terminamos|acabamos|se acaba|se termina)(?! (?:de|con) ) | a casa(?! d)
  (?:abbiamo|avremo|hai|ha|avete|avrà|avrai) finito | (?:lei|tu) (?:è|sei|sarà) libero? | (?:è|sei|sarà|sarai) liber[oa] | (?:si torna|si va|tutti|torniamo|andiamo) a casa | (?:può|puoi|potrà|potrai) (?:andare|andarsene|ripartire|smontare) | basta così | (?:finisce|finisci|termina|terminiamo|finiamo)(?! (?:il|la|lo|le|i|gli|l'))
  (?:moet|moeten) (?:iedereen|alles|we|wij|jij|je) (?:eruit|weg|buiten|leeg|klaar) | (?:mag|kun|kan) (?:je|jij) (?:dan )?(?:weg|gaan|naar huis|inpakken) | (?:mag|kunt|kan) u (?:weg|gaan|naar huis|inpakken) | (?:ben|bent) (?:je|jij|u) (?:klaar|vrij|weg) | (?:zijn|is) (?:we|wij|het|alles) (?:klaar|afgelopen|gedaan|voorbij) | gaat${words(3)} sluiten | sluit${words(3)} af | (?:zit|zitten) (?:je|jouw|het) ${words(2)}erop
  (?:we|i) (?:let|leave|release|free|dismiss|liberate) you(?! (?:in|into|know)\\b) | you(?: are|'re|'ll be| will be)? (?:a )?(?:free|dismissed|dispensed|liberated|released|discharged|done|finished)(?: again| man| woman| person)?(?! (?:at|by|from|for|after|once|when|as soon as|to (?!go))\\b) | your (?:presence|work|job|part|mission|day|duty|shift|service|engagement) (?:ends|finishes|is (?:over|done|finished)|stops) | (?:and )?we say goodbye
  (?:it )?is (?:finish|finished|over) (?:also )?for you | (?:and )?then finish(?:ed)?\\b | you (?:can|may) (?:drive|return|travel|take your|catch your|go|leave)\\b(?! (?:when|once|after|as soon as|at|by|from)\\b) | (?:we are back|we're back|back)[^.;!?\\d]{0,20} and (?:wish you|say goodbye) | to be (?:released|free|liberated|finished)
`);
/** "at 15h, you come for that", "14 Uhr, kommen Sie bitte dann", "las 17:30 y a esa hora tendría usted que estar" */
const THEN_THERE = new RegExp(
  String.raw`^[^.;?!\d\n]{0,70}?${FROM_HERE}(?:${listed(`
    (?:you|u|ya|ye)(?:'d|'ll| would| should| must| will)?(?: also)?(?: need| needs| have| has| want| ought)?(?: to)? be (?:(?:up|down|over|out|already) )?(?:there|here|in place|ready|in position|with us)(?: already)? (?:for (?:that|it|this)|(?:at|by|from) that (?:time|hour|moment|point)|(?:by |from )?then)
    (?:you|u|ya|ye)(?:'d|'ll| would| should| must| will)?(?: already)? (?:come|arrive|join us|are there|are here)(?: already)? (?:for (?:that|it|this)|(?:at|by) that (?:time|hour)|then(?! you| we| it))
    so come then | come for (?:that|it|this)(?! too) | there (?:already )?you (?:have to|must|need to|should) be | that(?: i|')s (?:the hour|your hour)
    a esa hora(?: ya)? (?:tendr[ií]as?|tienes?|deber[ií]as?|debes?|hay que|te|le|puedes?)(?! ir) | kommen sie (?:bitte )?(?:dann|dazu|da) | komm(?: bitte)? (?:dann|dazu) | (?:dann|zu der zeit|zu dieser zeit) (?:sollten|müssten|sollen|müssen|solltest|müsstest) (?:sie|du)
    (?:soyez|sois|venez|viens)(?: donc)?(?: là)? à ce moment(?:-là)? | (?:soyez|sois|venez|viens)(?: donc)? (?:pour ça|à cette heure)(?:-là)? | a quell'ora (?:deve|devi|dovrebbe|dovresti|la|ti) | (?:dan|op dat moment) (?:moet|zou|verwachten|verwacht) (?:je|jij|u|we|wij|ik)
  `)})${TO_HERE}`,
  'i',
);
/** "and there you have finished", "et vous aussi", "après vous filez", "e lei è libero" */
const AND_DONE = new RegExp(
  String.raw`^[^.?!\d\n(]{0,40}?(?:[,;-] ?(?:(?:and|und|et|y|e|en) )?|${FROM_HERE}(?:and|und|et|y|e|en|&) )(?:${listed(`
    (?:from )?there (?:you(?:'ve|'re| have| are)?|we(?:'ve|'re| have| are)?) (?:finished|done|free|ended) | then (?:you )?(?:are )?(?:finish|finished|free|done)(?: also)?(?: for you)?(?=\\s?[.,;!\\n]|$) | (?:then |there )?you(?:'re| are)? (?:free|released|liberated|dismissed|relieved)(?: man| woman)?(?! (?:on|for|that|in|after|once|when|as soon as|to (?!go))\\b)
    (?:après|ensuite|puis)(?: quoi)?,? (?:vous|tu) (?:filez|files|partez|pars|êtes|es|pouvez|peux|rentrez)(?! (?:filmez|reste)) | vous êtes libre | tu es libre | (?:danach|dann) (?:sind sie|bist du|können sie gehen|kannst du gehen|ist schluss|ist feierabend) | (?:lei|tu) (?:è|sei) libero | l[ìi] finisce | dopodiché (?:lei |tu )?(?:è|sei) liber[oa] | poi (?:è|sei) liber[oa]
    (?:luego|después|ya) (?:quedas?|eres|estás|está|te vas|puedes irte) | (?:ya )?(?:quedas?|estás|está)(?: usted)? libre | (?:dan |daarna )?(?:ben|bent) (?:je|jij|u) (?:klaar|vrij) | (?:dan|daarna) mag je weg | jij ook(?=\\s?[.,;!\\n]|$)
    (?:we|i) (?:say goodbye|wish you (?:a )?(?:good|nice|safe))
  `)})${TO_HERE}`,
  'i',
);

/** "and you're free at 18:00", "are you free?" */
const HOUR_OF_ITS_OWN = /^[^.;!,\n]{0,20}\?|^(?: [^\s.;!?\d]{1,12}){0,2} ?(?:\d|half|halb|noon|midday|midnight)/iu;

/** What follows an hour says that I must be there then, or that I may go; nothing where it says neither. */
export function builtAbroad(after: string): 'call' | 'wrap' | undefined {
  const free = (match: RegExpExecArray | null): boolean => match !== null && !HOUR_OF_ITS_OWN.test(after.slice(match[0].length));
  if (free(WRAP_AFTER.exec(after) ?? AND_DONE.exec(after))) return 'wrap';
  return free(CALL_AFTER.exec(after) ?? THEN_THERE.exec(after)) ? 'call' : undefined;
}
