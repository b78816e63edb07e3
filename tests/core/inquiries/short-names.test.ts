/**
 * Short weekdays and months of other languages, and the same letters where they are plain words.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

describe('two days by their short names', () => {
  const ways = lines(`
    Hoi Kit, we zoeken een cameraman op vr 15 en za 16 januari in Utrecht, kun je dan? Budget 475 per dag.
    Hoi Kit, ben je vrij van vr 15 t/m za 16 jan? Wij zoeken een videograaf voor een congres in Utrecht.
    Hallo Kit, wir suchen eine Kamera für Fr und Sa, 15./16. Januar in Hamburg. Hast du Zeit, was kostet das?
    Hallo Kit, wir brauchen einen Kameramann am Fr 15. und Sa 16. Jan. in Kassel, 480 € am Tag.
    Bonjour Kit, nous cherchons un cadreur pour ven. 15 et sam. 16 janv. à Dijon, 400 € par jour.
    Bonjour, il nous faut une captation les ven 15 et sam 16 janvier à Dijon, êtes-vous libre ?
    Hola Kit, buscamos videógrafo para el vie 15 y sáb 16 de enero en Sevilla, 350 € al día.
    Hola Kit, ¿estás libre vie 15 y sáb 16 ene? Buscamos videógrafo para una boda en Sevilla.
    Ciao Kit, cerchiamo un operatore per ven 15 e sab 16 gen a Bologna, 300 € al giorno, sei libero?
  `);
  test.each(ways)('%s', (way) => expect(facts(way)).toMatchObject({ start: '2027-01-15', end: '2027-01-16', days: 2 }));
});

describe('the same letters are words, names or money elsewhere', () => {
  const ways = lines(`
    Could you do 15 January as our videographer in Duluth? So 12 people, Sam 14 and Di 16 among them, want a film.
    Can you film our AGM on 15 January in Duluth? We set 12 chairs out and ma 14 pals do 13 songs.
    Hallo Kit, wir suchen für den 15. Januar eine Kamera in Zürich, Fr. 450 für den Tag, bitte an Fr. Keller melden.
    Hoi Kit, wij zoeken een cameraman op 15 januari in Utrecht, graag contact met Maria di Lorenzo.
  `);
  test.each(ways)('%s', (way) => expect(facts(way)).toMatchObject({ start: '2027-01-15', end: '2027-01-15' }));
});
