/**
 * How work is asked for in languages other than English.
 */

/** Can you, would you, are you free, we look for, we need, we would like, what does it cost. */
export const ABROAD = new RegExp(
  `(?<!\\p{L})(?:${[
    "(?:pouvez|pourriez|peux|pourrais|seriez|serais|êtes|es|avez|auriez|as|aurais)[- ](?:vous|tu)|tu (?:es|serais|peux|pourrais)|(?:re)?cherch(?:e|ons|ent)|besoin d|(?:souhait|aimer|voudr|désir)(?:e|ons|ions|erions|erais|ais|ait)|tarif|devis|combien|disponibles?|dispo|il nous (?:faut|faudrait)|t[’']es (?:chaud|partant)e?",
    'habt (?:ihr|sie)|ob (?:sie|du|ihr)(?=[^?!]{0,120} (?:\\p{L}{0,6}(?:film|dreh|stream)en|auf(?:zeichn|nehm)en|fotografieren|übernehmen|frei|zeit|verfügbar)(?!\\p{L}))|wünschen wir|behöver|trenger|har brug for|fehlt|fehlen|(?:über|um) ein angebot|lust auf|(?:können|könnten|kannst|könntest|haben|hätten|hättest|hast|würden|würdest|wären|wärst|bist|sind|wollen|willst) (?:sie|du|ihr)|such(?:e|en|t|st)|gesucht|brauch(?:e|en|t)|bräuchten?|benötig(?:e|en|t)|möchten?|was (?:würde|kostet|kosten|verlangen)|verfügbar|hast du zeit',
    'puedes?|podéis|podrías?|podríais|estás? (?:libre|disponible)|tienes? (?:libre|disponib\\p{L}+)|necesit(?:o|amos|an|aríamos)|busc(?:o|amos|an|ando)|cuánto|quer(?:emos|ríamos)|quisiéramos|nos gustaría|presupuesto para|te apetece',
    '(?:kun|kunt|kan|zou|heb|hebt|ben|bent|zijn) (?:je|jij|u|jullie)|zoek(?:en|t)?|nodig|beschikbaar',
    'ti interessa|le interessa|ci serv(?:e|ono|irebbe(?:ro)?)|puoi|potresti|potrebbe|può|cerc(?:o|hiamo|a|asi)|vorr(?:emmo|ei)|sei (?:libero|libera|disponibile)|sareste|quanto (?:costa|costerebbe|chiedi|prendi)',
    'você pode|poderia|procur(?:o|amos)|precis(?:o|amos)|está disponível|quanto custa',
  ].join('|')})(?!\\p{L})`,
  'iu',
);
