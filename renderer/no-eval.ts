/** The page is served under a policy that forbids code made from text; the schema library must not try. Comes before anything that makes a schema. */
import { z } from 'zod';

z.config({ jitless: true });
