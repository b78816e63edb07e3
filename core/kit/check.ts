/**
 * What cannot be of a thing and its units, by the field that says so.
 */
import type { KitItemFields } from '../contract/kit.ts';

type FieldTrouble = { field: string; sentence: string };

/** Nothing where all of it can be. Fields are named from the thing on, such as `units[0].serial`. */
export function kitTroubles({ owned, units, services }: KitItemFields): FieldTrouble[] {
  const serials = units.map(({ serial }) => serial.toLowerCase());
  return [
    ...(units.length > owned
      ? [{ field: 'owned', sentence: `${units.length} units with a serial for ${owned} owned: count them all.` }]
      : []),
    ...units.flatMap(({ serial }, at) =>
      serials.indexOf(serial.toLowerCase()) < at ? [{ field: `units[${at}].serial`, sentence: `Serial ${serial} stands twice.` }] : [],
    ),
    ...backwards(services, 'services'),
    ...units.flatMap((unit, at) => backwards(unit.services, `units[${at}].services`)),
  ];
}

function backwards(services: readonly { from: string; to: string }[], path: string): FieldTrouble[] {
  return services.flatMap(({ from, to }, at) =>
    to < from ? [{ field: `${path}[${at}].to`, sentence: 'The service ends before it begins.' }] : [],
  );
}
