/**
 * Geodesic distances against published pairs.
 * @source GeographicLib (C. F. F. Karney), documentation of the Geodesic class and its JavaScript examples, inverse problem, 2013 to 2024
 */
import { describe, expect, test } from 'vitest';
import { distanceKm } from '../../core/places/distance.ts';

describe('GeographicLib, geodesics on WGS 84', () => {
  // GeographicLib JavaScript documentation, "Examples", inverse problem: s12 = 19959679.26735382 m
  test('Wellington to Salamanca', () => {
    expect(distanceKm({ lat: -41.32, lon: 174.81 }, { lat: 40.96, lon: -5.5 })).toBeCloseTo(19_959.67926735382, 8);
  });
  // Geodesics.jl, readme, 2020 (a port that quotes the library): 396614.87733361026 m
  test('Jarrow to the Palace of Westminster', () => {
    expect(distanceKm({ lat: 54.967618, lon: -1.4951547 }, { lat: 51.4994794, lon: -0.1270032 })).toBeCloseTo(396.61487733361, 8);
  });
  // GeographicLib's example pair JFK to LHR; the coordinates are published, the distance is computed (from memory: 5551.76 km)
  test('JFK to LHR', () => {
    expect(distanceKm({ lat: 40.6, lon: -73.8 }, { lat: 51.6, lon: -0.5 })).toBeCloseTo(5_551.7594, 3);
  });
});

test('a place is nowhere from itself, and the way back is as long', () => {
  const duluth = { lat: 46.783, lon: -92.107 };
  const thunderBay = { lat: 48.382, lon: -89.25 };
  expect(distanceKm(duluth, duluth)).toBe(0);
  expect(distanceKm(duluth, thunderBay)).toBe(distanceKm(thunderBay, duluth));
});
