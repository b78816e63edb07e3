/**
 * Words in German, French, Spanish, Italian and Dutch that tell what a date or an hour is said of. Each line holds a few phrases of one language.
 */

const HOUR = String.raw`(?:\d|noon|mittag|midi|minuit|mitternacht|mediod|mezzo|mezza|middernacht|halb|half|viertel|dreiviertel|kwart|\p{L}+ (?:uhr|heures|uur)|(?<=\b(?:a las?|alle|um|om|gegen|rond|tegen) )(?:un[ao]|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce|ein|zwei|drei|vier|fünf|sechs|sieben|acht|neun|zehn|elf|zwölf|een|twee|drie|vijf|zes|zeven|negen|tien|twaalf|due|tre|quattro|cinque|sei|sette|otto|nove|dieci|undici|dodici)(?!\p{L}))`;
/** A few words, and then an hour or a date. */
const near = String.raw`(?=,?[^\S\n]?:?[^\S\n]?\(?(?:[\p{L}']{1,12}\.?[^\S\n]){0,5}:?[^\S\n]?${HOUR})`;
/** Only the small words that lead to one. */
const right = String.raw`(?=\s?:?\s(?:(?:ist|um|ab|gegen|bis|ca\.?|etwa|am|est|à|dès|vers|le|la|las|es|sobre|alle|all|il|è|verso|om|rond|is|op|de|den|domenica|sabato|sábado|domingo|lunes|martes|miércoles|jueves|viernes|dimanche|\p{L}+(?:tag|dag|di|day))(?!\p{L})\s?){0,4}${HOUR})`;
const listed = (list: string, lead: string): string =>
  String.raw`(?<!\p{L})(?:${list
    .trim()
    .split(/\s*\|\s*|\n\s*/)
    .join('|')})(?!\p{L})${lead}`;
const words = (list: string): string => listed(list, near);
const short = (list: string): string => listed(list, right);

export const callElsewhere = `${words(`
  aufbau(?:beginn|zeit)? | arbeitsbeginn | einrichten | einrichtung | ankunft | eintreffen | treffen | treffpunkt | einsatz(?:beginn|zeit)? | dienstbeginn | beginn für (?:dich|sie|euch) | vor ort | da sein | dasein | (?:crew|kamera)start | zutritt | einlass (?:für )?(?:die )?(?:crew|sie|dich|euch|video|technik) | anlieferung | drehbeginn | los geht's | du (?:solltest|müsstest) | zugang
  soyez(?: là| sur place)? | sois là | équipe vidéo | vous êtes attendue?s? | tu es attendue? | vous arrivez | tu arrives | vous commencez | tu commences | il faut être | venez | viens | du kommst | du fängst | sie kommen | kommen sie | début(?! d(?:u|e|es)\\b| à\\b) | inicio | comienzo | komm bitte | du bist da | kommst du | wir brauchen dich | wir brauchen sie | je komt | je begint | tu empiezas | empiezas | llegas | vienes | arrivi | inizi | (?:empezar|comenzar|llegar|entrar)[ií](?:as?|ais|amos)?s? | vendr[ií]as? | (?:empezar|comenzar)emos | (?:commencer|arriver)(?:iez|ais|ez|as) | viendr(?:iez|ais|ez|as) | iniziere(?:sti|mo) | arriveresti
  arrivée | (?:d')?arriver | arrivez | être présente? | rendez-vous | rdv | installation | mise en place | montage (?:du plateau|du matériel|technique|de la régie|régie) | accès(?: à la salle)? | sur place | être là | on se retrouve | on vous attend | on t'attend | présence | répétition | convocation(?! (?:on|in|at|of|is|for|day|ceremony|will) ) | prise de poste | appel(?= à) | toi(?= à) | vous(?= à) | tú(?= a las) | jij(?= om) | début de mission
  préparatifs(?= (?:à partir|dès|à)) | (?:tu peux|tu pourrais|vous pouvez|vous pourriez|il faudrait) (?:venir|être là|arriver|entrer|t'installer|vous installer) | (?:técnicos|tú|usted|ustedes)? ?(?:pued[eo]s?|pueden|podr[ií]as?|podéis) (?:entrar|venir|llegar|montar) | (?:può|puoi|potrebbe|potresti|possono) (?:arrivare|venire|entrare|montare) | apre (?:per|ai) (?:i )?(?:tecnici|voi|lei|te) | (?:ben|bent|kun|kunt|zou) (?:je|jij|u) (?:er|daar|hier)
  llegada | llegar | montaje | montamos | quedamos | quedada | convocatoria | citación | hay que estar | tienes que estar | debe estar | estar allí | acceso | ensayo | entrada del equipo | empezamos | comenzamos
  être (?:sur les lieux|dans la salle|à la salle|à l'hôtel|à l'église) | (?:pourriez|pouvez)-vous (?:être|venir|arriver) | (?:pourrais|peux)-tu (?:être|venir|arriver) | trovarsi | (?:sei|sia|essere) (?:lì|là|qui|in (?:villa|sala|teatro|chiesa|loco)) | (?:si )?(?:comincerebbe|cominceremmo|inizierebbe|comincerei) | da(?= ab \\d)
  ti aspettiamo | vi aspettiamo | la aspettiamo | te esperamos | le esperamos | wir erwarten dich | wir erwarten sie
  arrivo | ritrovo | appuntamento | convocazione | allestimento | montaggio | presentarsi | essere (?:lì|sul posto|pronti) | accesso | sul posto | ci troviamo
  sei(?:d)? (?:bitte|schon|um) | seien sie | sein sie | wees (?:jij|je|u) | estar(?: aquí| allí| en (?:el|la|los))? | estar[áé] | te querr[ií]amos | tendr[ií]as? que estar | habr[ií]a que estar | habrá que estar | haría falta
  hätten wir (?:sie|dich|euch) gern | bräuchten wir (?:sie|dich|euch) | müss(?:test|ten|est) (?:du|sie) | (?:te|le|os) (?:necesitamos|necesitar[ií]amos|querr[ií]amos) | quedar[ií]amos | llegue | encuentro | hebben (?:je|u|jou) graag | (?:gij|ge|jij|je|u) (?:zoudt|zou|moet|moogt) er | arrivée (?:du|de la|de l'|des) (?:prestataire|équipe|technique|techniciens)
  møt oss | møter? (?:du|vi|opp) | m[øö]tes | mødes | mød (?:os|op) | oppmøte | fremmøte | mødetid | oppmøtetid | samling | samlas | vi ses | vi sees | ses vi | (?:du|dere|i) (?:skal|må|bør|ska|måste) (?:være|stå|vara) | vær (?:der|her|klar|på plass|på plads) | var (?:där|här|på plats) | på (?:plass|plads|plats) | opstilling | oprigning | opprigg | uppriggning | riggning | rigging | vi (?:venter|væntar|väntar|forventer) (?:dig|deg)
  montagem | chegu?e[ims]? | chegass(?:e|es|em) | chegar | chegada | esteja | estejas | quero (?:você|te) | queremos (?:você|que (?:chegue|venha|esteja)) | precisamos de (?:ti|si|você) | contamos (?:contigo|consigo|com você) | encontro | encontramo-nos | ensaio | venha | apareça
  oproep | oproeptijd | (?:beginnt|startet) (?:der|dein|ihr|euer) (?:dienst|einsatz|dreh|arbeitstag)
  opbouw | aankomst | aanwezig(?:heid)? | ter plaatse | inladen | laden en lossen | verzamelen | toegang
`)}|${short('binnen | beginnen | start | beginn | prove | los | montage')}`;
export const wrapElsewhere = `${words(`
  ende der veranstaltung | arbeitsende | dienstende | drehende | einsatzende | einsatzschluss | ende (?:ihrer|deiner) (?:arbeit|schicht) | drehschluss | feierabend | (?:schluss|feierabend|ende|fertig) für (?:dich|sie|euch) | abbau(?: fertig)? | fertig | abreise
  kannst du gehen | du kannst gehen | können sie gehen | bist du fertig | sind sie fertig | vous êtes libre | tu es libre | libérée?s? | vous finissez | tu finis | on remballe | quedas libre | finisci | mag je weg | ben je klaar
  fin (?:de (?:journée|mission|prestation|service|tournage)|prévue) | libération | tout (?:est )?(?:plié|fini|démonté|rangé) | démontage | terminé | on termine | on finit | (?:vous pourr(?:ez|iez)|tu pourra(?:s|is)|vous pouvez|tu peux) (?:partir|repartir) | finit | finissent | se termine | se finit | jusqu'à | sortie de salle
  acaba(?:mos)? | termina(?:mos)? | desmontaje | recogido | salida | salimos | se acaba
  si finisce | si smonta | se termina
  termine | finisce | finiamo | smontaggio | si chiude
  (?:acabar|terminar|finir)[ií](?:as?|ais|amos)? | (?:acabar|terminar)(?:emos|[áa]n?|[áa]s) | (?:finir|terminer)(?:iez|ais|ez|as|ons|a) | s'arrêtent? | finire(?:sti|mo)
  klaar | afgelopen | afbouw | uitladen | einde? (?:van )?(?:uw |je |jouw |de |het )?(?:inzet|opdracht|dienst|werk|klus|draaidag|filmen) | (?:ende|schluss) (?:des|deines|ihres|eures) (?:einsatzes|drehs|dienstes|arbeitstages) | fin (?:de |du |de la |de votre |de ta )(?:mission|service|travail|prestation|tournage|vacation) | fin (?:de |del |de tu |de su )(?:trabajo|jornada|servicio|rodaje|encargo|turno)
`)}|${short('ende | fin | fine | final(?! is\\b) | weg | schluss | einde | eind | termina | dauert | hasta | geht es')}`;
export const replyElsewhere = String.raw`(?<!\p{L})(?:${`
  rückmeldung|rückantwort|bescheid|antwort\\w*|zusage\\w*|zusagen|angebot\\w*|meld(?:e|en sie|et|t)? (?:sich|dich|euch|dir|uns|mir)|sag(?:t|en sie)? (?:mir|uns)|gib (?:mir|uns)|geben sie (?:mir|uns)
  réponse|répond\\w*|répondez|réponds|devis|retour|revenir vers (?:moi|nous)|dites-(?:moi|nous)|dis-(?:moi|nous)|confirme[rz]?|faire savoir|(?:me|nous) (?:dire|prévenir|confirmer)|savoir|tenez-(?:moi|nous)
  respuesta|respond\\w*|cont[eé]st\\w*|dime|dinos|dígame|díganos|avísa\\w*|avisa\\w*|conf[ií]rm\\w*|presupuesto|propuesta
  risposta|rispond\\w*|conferma\\w*|fammi sapere|facci sapere|fateci sapere|preventivo|sapere
  antwoord\\w*|horen|hoor|reactie|reageer|laat (?:je )?(?:het )?(?:me |mij |ons )?weten|bevestig\\w*|offerte
`
  .trim()
  .split(/\n\s*/)
  .join(
    '|',
  )})(?!\p{L})[^.;?!]{0,50}?(?:bis(?: zum| spätestens| spätestens zum)?|spätestens(?: bis)?(?: zum)?|vor(?: dem)?|avant(?: le)?|d'ici(?: le| au)?|au plus tard(?: le)?|pour le|jusqu'au|antes del?|hasta(?: el)?|a más tardar(?: el)?|para el|entro(?: il| e non oltre il)?|prima del?|uiterlijk(?: op)?|vóór|voor|tegen)(?!\p{L})`;
/** Bills, papers, holidays and what was: nothing of the work. */
export const otherElsewhere = String.raw`(?<!\p{L})(?:rechnung\w*|urlaub|angebotsfrist|facture\w*|congés|vacances|factura\w*|vacaciones|fattura\w*|ferie|factuur|vakantie|anzahlung|acompte|anticipo|visite technique|vorbesprechung|telefonat|billets?|eintrittskarten)(?!\p{L})`;
export const pastElsewhere = String.raw`(?<!\p{L})(?:letzte[snr]? (?:jahr|mal|woche|monat)|voriges jahr|l'an(?:née)? dernière?|l'année passée|la dernière fois|el año pasado|la última vez|l'anno scorso|l'altra volta|vorig jaar|de vorige keer|verschoben (?:vom|von)|statt(?: am)?|au lieu du|en lugar del?|invece del?|in plaats van)(?!\p{L})`;
export const deliveryElsewhere = String.raw`(?<!\p{L})(?:liefer\w*|abgabe|fertige[rs]? (?:film|schnitt|video)|livraison|livr(?:er|é|ée|able)s?|montage final|rendu|entreg\w*|vídeo final|consegna\w*|montato|oplever\w*|aanlever\w*|eindmontage)(?!\p{L})`;
export const showElsewhere = String.raw`(?<!\p{L})(?:einlass|konzertbeginn|veranstaltungsbeginn|anpfiff|beginn der veranstaltung|gäste|ouverture des portes|le concert|le spectacle|la cérémonie|invités|les invités|début (?:du|de la|des)|apertura de puertas|la ceremonia|el concierto|los invitados|inizio(?: dello| del| della)?|apertura porte|la cerimonia|gli ospiti|deuren open|aanvang|konserten|konsert(?:en)? (?:begynner|begynder|börjar|starter)|programmet|gudstjenesten|vielsen|vigsel(?:n)?|festen|forestillingen|föreställningen|(?:dørene|dörrarna) (?:åpner|åbner|öppnar)|gjestene|gæsterne|gästerna|begynner|begynder|börjar|a cerim[óôo]nia|o concerto|a missa|os convidados|começa[m]?|actuam|atuam|de gasten|publiek)(?!\p{L})`;
