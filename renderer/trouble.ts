/** What went wrong, in the contract's shape, from whatever was thrown. */
import { ORPCError } from '@orpc/client';
import type { Trouble } from '../core/contract/base.ts';
import { troubleInWords } from '../core/words/fields.ts';

function isTrouble(data: unknown): data is Trouble {
  return typeof data === 'object' && data !== null && 'what' in data && 'kept' in data && 'todo' in data;
}

/** The trouble that an error carries; a door that does not answer gets its own sentence. */
export function troubleOf(error: unknown): Trouble {
  if (error instanceof ORPCError && isTrouble(error.data)) return troubleInWords(error.data);
  if (error instanceof ORPCError && (error.status === 401 || error.status === 403)) {
    return {
      what: 'This page has no key to the store.',
      kept: 'Nothing was changed.',
      todo: 'Open the address that the program printed when it started; the key is at its end.',
    };
  }
  return {
    what: 'The program does not answer.',
    kept: 'What was saved is safe; the last step was not saved.',
    todo: 'Look whether it still runs, start it again if it does not, then try again.',
  };
}

/** The sentence for one input, found by the end of its path: `dayRate` finds `fields.dayRate`. */
export function fieldTrouble(trouble: Trouble | null, field: string): string | undefined {
  return trouble?.fields?.find((each) => each.field === field || each.field.endsWith(`.${field}`))?.sentence;
}
