/**
 * Places of the tests: cities with rounded positions.
 */
import type { Place } from '../../../core/contract/parts.ts';

function city(name: string, country: string, lat: number, lon: number, zone: string): Place {
  return { key: `test:${name}`, name, region: '', country, lat, lon, zone };
}

export const duluth = city('Duluth', 'US', 46.7833, -92.1066, 'America/Chicago');
export const milwaukee = city('Milwaukee', 'US', 43.0389, -87.9065, 'America/Chicago');
export const fargo = city('Fargo', 'US', 46.8772, -96.7898, 'America/Chicago');
export const thunderBay = city('Thunder Bay', 'CA', 48.3822, -89.2502, 'America/Toronto');
export const superior = city('Superior', 'US', 46.7208, -92.1041, 'America/Chicago');
export const stPaul = city('Saint Paul', 'US', 44.9444, -93.0933, 'America/Chicago');
export const denver = city('Denver', 'US', 39.7392, -104.9847, 'America/Denver');
export const phoenix = city('Phoenix', 'US', 33.4484, -112.074, 'America/Phoenix');
export const losAngeles = city('Los Angeles', 'US', 34.0522, -118.2437, 'America/Los_Angeles');
export const stJohns = city('St. John’s', 'CA', 47.5615, -52.7126, 'America/St_Johns');
export const honolulu = city('Honolulu', 'US', 21.3069, -157.8583, 'Pacific/Honolulu');
export const auckland = city('Auckland', 'NZ', -36.8485, 174.7633, 'Pacific/Auckland');
export const kathmandu = city('Kathmandu', 'NP', 27.7172, 85.324, 'Asia/Kathmandu');
export const delhi = city('Delhi', 'IN', 28.6139, 77.209, 'Asia/Kolkata');
export const london = city('London', 'GB', 51.5074, -0.1278, 'Europe/London');
export const paris = city('Paris', 'FR', 48.8566, 2.3522, 'Europe/Paris');
export const utcTown = city('Nullby', 'IS', 64.1355, -21.8954, 'Atlantic/Reykjavik');
export const utcPort = city('Nullport', 'IS', 65.6835, -18.0878, 'Atlantic/Reykjavik');
