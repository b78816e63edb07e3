/**
 * Checksums of files against the vectors that the hash is published with, seed 0, from 0 bytes to 3 blocks.
 * @source Y. Collet, xxHash reference implementation, release line 0.8, vectors of XXH3_128bits in cli/xsum_sanity_check.c (commit 08ae0257), from 2020 on
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { hashFile } from '../../../electron/files/hash-file.ts';
import { temporaryFolder } from '../../store.ts';

/** Length in bytes, low and high half of the hash. */
const VECTORS = [
  [0, '6001C324468D497F', '99AA06D3014798D8'],
  [1, 'C44BDFF4074EECDB', 'A6CD5E9392000F6A'],
  [6, '3E7039BDDA43CFC6', '082AFE0B8162D12A'],
  [12, '061A192713F69AD9', '6E3EFD8FC7802B18'],
  [24, '1E7044D28B1B901D', '0CE966E4678D3761'],
  [48, 'F942219AED80F67B', 'A002AC4E5478227E'],
  [81, '5E8BAFB9F95FB803', '4952F58181AB0042'],
  [222, 'F1AEBD597CEC6B3A', '337E09641B948717'],
  [403, 'CDEB804D65C6DEA4', '1B6DE21E332DD73D'],
  [512, '617E49599013CB6B', '18D2D110DCC9BCA1'],
  [2048, 'DD59E2C3A5F038E0', 'F736557FD47073A5'],
  [2240, '6E73A90539CF2948', 'CCB134FBFA7CE49D'],
  [2367, 'CB37AEB9E5D361ED', 'E89C0F6FF369B427'],
] as const;

/** The bytes that the vectors are about: the top byte of a number that is multiplied by a prime at each step, modulo 2^64. */
function sanityBytes(length: number): Uint8Array {
  let state = 2_654_435_761n;
  return Uint8Array.from({ length }, () => {
    const byte = Number(state >> 56n);
    state = (state * 11_400_714_785_074_694_797n) & 0xffff_ffff_ffff_ffffn;
    return byte;
  });
}

describe('a file of the published bytes has the published checksum, high half first', () => {
  test.each(VECTORS)('%i bytes', async (length, low, high) => {
    const path = join(temporaryFolder(), 'vector.bin');
    writeFileSync(path, sanityBytes(length));
    const hashed = await hashFile(path, { signal: new AbortController().signal, onRead: () => undefined });
    expect(hashed).toEqual({ bytes: length, hash: `${high}${low}`.toLowerCase() });
  });
});
