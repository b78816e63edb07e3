/** One mile in kilometres, exactly (international yard and pound agreement, 1959). */
const KM_PER_MILE = 1.609344;

/** A distance in the unit of the person's setup, rounded to whole units: "640 km", "398 mi". */
export function distanceInWords(km: number, unit: 'mi' | 'km'): string {
  return `${Math.round(unit === 'mi' ? km / KM_PER_MILE : km)} ${unit}`;
}
