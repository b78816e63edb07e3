import { kitAndTickets } from './kit-and-tickets.ts';
import { more } from './more.ts';
import { neighbours } from './neighbours.ts';
import { pencilsAndClocks } from './pencils-and-clocks.ts';
import type { Situation } from './shape.ts';

export const everySituation: readonly Situation[] = [...neighbours, ...pencilsAndClocks, ...kitAndTickets, ...more];
