/** What the processes of these tests, which may not load the test runner, have in common with it. */

/** 2026-12-01T15:00:00Z in epoch milliseconds. */
export const FAULTS_NOW = 1_796_137_200_000;

/** The key of the deed that saved a pair. */
export const pairKey = (number: number) => `01939c1e-0000-7000-8000-${String(number).padStart(12, '0')}`;
