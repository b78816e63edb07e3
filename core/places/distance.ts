/**
 * Distance between two places: the shortest way over the WGS 84 ellipsoid, after C. F. F. Karney, "Algorithms for geodesics" (2013).
 */
import geographiclib from 'geographiclib-geodesic';

export type Position = { lat: number; lon: number };

const { Geodesic } = geographiclib;

/** Geodesic distance in kilometres; degrees in, exact to well under a millimetre, also for opposite ends of the Earth. */
export function distanceKm(from: Position, to: Position): number {
  const metres = Geodesic.WGS84.Inverse(from.lat, from.lon, to.lat, to.lon, Geodesic.DISTANCE).s12;
  return (metres ?? 0) / 1000;
}
