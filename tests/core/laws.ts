/**
 * How laws are tried: the same cases on every computer, at most 200 a law; ten thousand in the long run.
 */
export const tried = { seed: 20_261_125, numRuns: process.env['KITBOUND_LONG'] === '1' ? 10_000 : 200 };
