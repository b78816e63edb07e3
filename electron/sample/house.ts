/**
 * What stands before the first job of the sample: details, rate cards, people, kit, ways and own time.
 */
import { call } from '@orpc/server';
import { sample } from '../../assets/sample/index.ts';
import type { SampleCard, SampleDate, SampleHand, SamplePersonal, SampleThing } from '../../assets/sample/shape.ts';
import { blankItem, blankUnit } from '../../core/kit/blank.ts';
import { blankClient, blankHand } from '../../core/people/blank.ts';
import { dateLater } from '../../core/time/wall.ts';
import { documents } from '../api/documents.ts';
import { kit } from '../api/kit.ts';
import { people } from '../api/people.ts';
import { personal } from '../api/personal.ts';
import { rates } from '../api/rates.ts';
import { setup } from '../api/setup.ts';
import { templates } from '../api/templates.ts';
import { trips } from '../api/trips.ts';
import type { Cast } from './cast.ts';
import { dateOf, momentAt } from './dates.ts';

/** A step of the sample: when (epoch milliseconds), and what is done then. */
export type Step = { at: number; act: () => Promise<unknown> };

/** A rate card is closed so long before its last day, when the next one is written, in days. */
const CLOSED_BEFORE = 45;

/** Everything but the jobs, as steps; those of one moment in the order in which they need each other. */
export function houseSteps(cast: Cast): Step[] {
  const { today } = cast;
  const morning = (date: SampleDate): number => momentAt(dateOf(date, today), '08:00', today.zone);
  const begins = morning(sample.begins);
  const later = (date: SampleDate | undefined): number => (date === undefined ? begins : Math.max(begins, morning(date)));
  const bought = new Map(sample.things.map((thing) => [thing.name, later(thing.bought)]));
  const at = (moment: number, act: () => Promise<unknown>): Step => ({ at: moment, act });
  return [
    at(begins, async () => {
      const { home, ...fields } = sample.setup;
      await call(setup.save, { fields: { ...fields, home: await cast.place(home) } }, cast);
    }),
    ...sample.cards.flatMap((card) => cardSteps(cast, card, morning(card.known))),
    ...sample.clients.map((client) =>
      at(begins, async () => {
        const { client: saved } = await call(people.saveClient, { fields: { ...blankClient(client.name), ...client } }, cast);
        cast.clients.set(saved.name, saved.id);
      }),
    ),
    ...sample.hands.map((hand) => at(begins, () => saveHand(cast, hand))),
    ...sample.things.map((thing) => at(later(thing.bought), () => saveThing(cast, thing))),
    ...sample.presets.map(({ name, needs }) => {
      const whole = Math.max(...needs.map(({ item }) => bought.get(item) ?? begins));
      return at(whole, () => call(kit.savePreset, { fields: { name, needs: [...needs] } }, cast));
    }),
    ...sample.ways.map(({ from, to, ...way }) =>
      at(begins, async () => call(trips.setWay, { fields: { ...way, from: await cast.place(from), to: await cast.place(to) } }, cast)),
    ),
    ...sample.templates.map((fields) => at(begins, () => call(templates.save, { fields }, cast))),
    ...sample.documents.map(({ from, until, ...told }) =>
      at(begins, () => {
        const on = (date: SampleDate): string => dateOf(date, today);
        return call(documents.save, { fields: { ...told, from: from === undefined ? null : on(from), until: on(until) } }, cast);
      }),
    ),
    ...sample.personal.map((own) => at(later(own.known), () => saveOwnTime(cast, own))),
  ];
}

function cardSteps(cast: Cast, { from, until, known: _known, terms, ...card }: SampleCard, written: number): Step[] {
  const validFrom = dateOf(from, cast.today);
  const save = async (): Promise<{ id: string; version: number }> => {
    const { fields } = await call(rates.defaults, { role: card.role, currency: card.currency, validFrom }, cast);
    return (await call(rates.save, { fields: { ...fields, ...card, terms: { ...fields.terms, ...terms } } }, cast)).card;
  };
  if (until === undefined) return [{ at: written, act: save }];
  const end = dateOf(until, cast.today);
  const close = async (): Promise<unknown> => {
    const { cards } = await call(rates.list, {}, cast);
    const open = cards.find(({ name }) => name === card.name);
    if (!open) throw new RangeError(`The sample has no card "${card.name}" to close.`);
    const { id, version, ...fields } = open;
    return call(rates.save, { id, version, fields: { ...fields, validTo: dateLater(end, -1) } }, cast);
  };
  return [
    { at: written, act: save },
    { at: momentAt(dateLater(end, -CLOSED_BEFORE), '09:00', cast.today.zone), act: close },
  ];
}

async function saveHand(cast: Cast, { home, rates: dated, insuredUntil, ...hand }: SampleHand): Promise<unknown> {
  const fields = {
    ...blankHand(hand.name),
    ...hand,
    home: await cast.place(home),
    rates: dated.map(({ from, ...rate }) => ({ ...rate, from: dateOf(from, cast.today) })),
    insuredUntil: insuredUntil && dateOf(insuredUntil, cast.today),
  };
  return call(people.saveHand, { fields }, cast);
}

function saveThing(cast: Cast, { bought, services = [], serials = [], ...thing }: SampleThing): Promise<unknown> {
  const on = (date: SampleDate): string => dateOf(date, cast.today);
  const fields = {
    ...blankItem(thing.name),
    ...thing,
    units: serials.map(blankUnit),
    bought: bought ? on(bought) : null,
    services: services.map(({ from, to, count }) => ({ from: on(from), to: on(to), count })),
  };
  return call(kit.save, { fields }, cast);
}

function saveOwnTime(cast: Cast, { from, days, known: _known, note = '', ...own }: SamplePersonal): Promise<unknown> {
  const first = dateOf(from, cast.today);
  const fields = { ...own, note, zone: cast.today.zone, from: `${first}T00:00`, to: `${dateLater(first, days)}T00:00` };
  return call(personal.save, { fields }, cast);
}
