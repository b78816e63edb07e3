/**
 * A thing of which nothing is known but its name, so that a form, a file or an old row only says what it knows.
 */
import type { KitItemFields, KitUnit } from '../contract/kit.ts';

/** One of it, own, made ready again in two hours (common practice). */
export function blankItem(name: string): KitItemFields {
  return {
    name,
    does: '',
    owned: 1,
    units: [],
    resetMinutes: 120,
    resetOnRoad: false,
    subHire: '',
    services: [],
    owner: 'own',
    grams: null,
    size: null,
    battery: 'none',
    wattHours: null,
    drawWatts: null,
    value: null,
    origin: null,
    bought: null,
    wearPerDay: null,
    note: '',
  };
}

/** A unit of which nothing is known but its serial: all else is as its thing says. */
export function blankUnit(serial: string): KitUnit {
  return { serial, place: '', owner: null, services: [], bought: null, value: null, wearPerDay: null, note: '' };
}
