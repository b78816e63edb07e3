import { StoreError } from '../db/trouble.ts';

/** The StoreError that something ends in; anything else fails the test. */
export async function refusalOf(act: () => unknown): Promise<StoreError> {
  try {
    await act();
  } catch (error) {
    if (error instanceof StoreError) return error;
    throw error;
  }
  throw new Error('Expected a StoreError, but it went through.');
}
