/**
 * Who is only told of: bodies that pay, play or lend, addresses and numbers of somebody else. None of them asks.
 */
import { describe, expect, it } from 'vitest';
import { facts, lines } from './reading.ts';

const asked = (words: string): string => `Hi Kit,\n\nCould you film our gala in Ripon on 12 June? ${words}\n\nThanks,\nRobin Farley`;
const OTHERS = lines(`
  The Ashdown Trust pays for it.
  Lights are by Moor Lighting Ltd.
  Pia Moss at Sedge Films said you're good.
  Anna from the Nidd Photographic Society suggested we ask you.
  Our chairs come from the Kelmarsh Guild.
  My brother plays for Ure Rowing Club.
  Castwell Media are doing the livestream.
  Sponsors: Vantage Pensions, Kirkby Homes, Dunmore Tyres.
  Call the hotel on 01632 960222 if you need a room.
  Write to info@harrowhall.example about parking.
  Our photographer is Ben Ardley, ben@ardleyphoto.example.
  Send the invoice to accounts@payright.example please.
  There is a talk by Sir Ian Moat, president of the Royal Bee Society.
  Our marketing girl, Steph (steph@adhouse.example), posts clips on the day.
  We are doing it together with Kirkby Rotary Club.
  Give my mother a ring on 07700 900607 if I don't answer.
  Tech rider questions go to tech@ripontheatre.example.
  The Lord Mayor's office, 01632 960050, arranges the cars.
`);

describe('somebody else', () => {
  it.each(OTHERS)('is not who asks: %s', (words) => {
    const { contactName, contactEmail, contactPhone, organisation } = facts(asked(words), undefined, 'leeds');
    expect([contactName, contactEmail, contactPhone, organisation]).toEqual(['Robin Farley', undefined, undefined, undefined]);
  });

  it('does not take the name of a chat from who wrote in small letters', () => {
    const text = "hey kit its robin, you free sat 12 june? need someone to film our do in ripon. The bride's name is Emily Strand.";
    expect(facts(text, undefined, 'leeds').contactName).toBe('robin');
  });

  it.each(
    lines(`
      Quotes to events@wetherdale.example please. => events@wetherdale.example
      Drop me a line at robin.farley@mailme.example. => robin.farley@mailme.example
      Any questions, give us a call on 01632 960765. => 01632 960765
      We at Castle Lane Society are retiring our founder. => Castle Lane Society
      We are Kirkby Wanderers, an amateur football club. => Kirkby Wanderers
      I trade as Larkrise Films. => Larkrise Films
      The Kelmarsh Society (that's us) turns fifty. => Kelmarsh Society
      The Kelmarsh Knitters' Guild conference is on at the same time and is what we film. => Kelmarsh Knitters' Guild
    `),
  )('is who asks: %s', (line) => {
    const [words = '', want = ''] = line.split(' => ');
    const { contactEmail, contactPhone, organisation } = facts(asked(words), undefined, 'leeds');
    expect([contactEmail, contactPhone, organisation?.replace(/^The /, '')]).toContain(want);
  });
});
