/**
 * The weights that ship with the program. What learns them anew does not read them: a model may be missing there.
 */
import type { Learned } from '../../core/inquiries/learned/models.ts';
import { learnedFrom } from '../../electron/api/learned.ts';

export const learned: Learned = learnedFrom()();
