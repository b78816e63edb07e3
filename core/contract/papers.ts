import { z } from 'zod';
import { reads } from './base.ts';
import { Id, Nothing } from './parts.ts';
import { Paper } from './jobs.ts';

export const papers = {
  read: reads(
    "A paper's bytes, checked against its hash.",
    z.strictObject({ id: Id }),
    z.strictObject({ paper: Paper, type: z.string(), base64: z.string() }),
  ),
  check: reads(
    'Papers that are on the books but not in the folder, or the other way about.',
    Nothing,
    z.strictObject({ whole: z.int(), lost: z.array(Paper), orphans: z.array(z.string()) }),
  ),
};
