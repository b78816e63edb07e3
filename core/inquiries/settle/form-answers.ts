/**
 * Hours that answer a question: "What time should we be there? 1pm", "When do you need us from?" and the hour in the line below it.
 */
import type { Where } from './scene.ts';

/** A question that stands right before the hour. */
const ASKED = /(?:^|[\n.!?:])[\s\d.)*•-]*([^\n.!?:]{4,80})\? ?[:–-]? ?\n?\s{0,3}(?:(?:at|from|by|about|around|until|till|til) )?$/i;
const REACH = 120;
const WHEN = String.raw`(?:(?:(?:at|by|from|until|till) )?what (?:time|hour)|(?:from |until |till )?when)`;
/** The firm to which a form belongs speaks of itself as "we"; who sends it speaks of me. */
const US = String.raw`(?:we|us|you|our (?:team|crew|videographer|filmmaker)s?|the (?:team|crew|videographer|camera|filmmaker|operator)s?)`;
const COMES = new RegExp(
  String.raw`^(?:and )?(?:${WHEN} (?:should|do|does|would|must|shall|can|could|may|will|are|is) ${US} (?:(?:need|have|want|supposed|expected|required|able|due) )?(?:to )?(?:be (?:there|here|on[- ]?site|at the venue)|arrive|come|start|begin|set up|get (?:there|here|in)|turn up|show up|expected|needed|required)|${WHEN} (?:do|does|would|will) (?:you|they|the client) (?:need|want|like|require|expect) ${US}(?! (?:until|till|to (?:finish|leave|stop)))|${WHEN} (?:is|are|'s) (?:the |your |our )?(?:crew )?(?:call|call time|arrival|access|load-?in|set-?up)|${WHEN} (?:does|should|will|would) (?:the )?(?:coverage|filming|shoot|recording) (?:start|begin)|(?:preferred |requested |crew |our )?(?:arrival|call|set-?up|access) time)`,
  'i',
);
const GOES = new RegExp(
  String.raw`^(?:and )?(?:(?:until|till) (?:what (?:time|hour)|when)|${WHEN} (?:do|does|would|will|should|can|could|may|are) ${US} (?:be )?(?:(?:need|have|want|able|allowed) to )?(?:finish|leave|stop|wrap|go|done|finished|released|pack up)|${WHEN} (?:do|does|would|will) (?:you|they|the client) (?:need|want|like|require) ${US} (?:until|till|to (?:finish|leave|stop))|${WHEN} (?:does|should|will|would) (?:it|the (?:coverage|filming|shoot|recording|event|day))(?: all)? (?:end|finish|stop|wrap)|(?:crew |our )?(?:finish|wrap|end|departure) time)`,
  'i',
);

/** What an hour is that answers a question about my coming or my going. */
export function answersForm(text: string, { start }: Where): 'call' | 'wrap' | undefined {
  const question = ASKED.exec(text.slice(Math.max(0, start - REACH), start))?.[1]?.trim() ?? '';
  if (COMES.test(question)) return /\b(?:until|till)\b/i.test(question) ? 'wrap' : 'call';
  return GOES.test(question) ? 'wrap' : undefined;
}
