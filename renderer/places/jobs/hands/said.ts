/**
 * Deeds on hands: what they were asked and what they said, each with a way back.
 */
import type { HandState } from '../../../../core/contract/hands.ts';
import { datesInWords, withoutYear } from '../../../../core/words/dates.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { copyText } from '../../../parts/copy.ts';
import { sayWithUndo } from '../../../undo.ts';

export type Named = { jobId: string; handId: string; name: string };

const WORDS: Record<HandState, string> = {
  asked: 'is asked',
  pencilled: 'holds in pencil',
  'said yes': 'said yes',
  'said no': 'said no',
  'let go': 'was let go',
};

/** Dates as they are said beside a name: "Fri 11 and Sat 12 December". */
export const shortDates = (dates: readonly string[]): string => withoutYear(datesInWords([...dates].sort()));

/** What is found for a hand, as it stands below their name: it need not say it again. */
export function belowName(name: string, sentence: string): string {
  const said = `For ${name}: `;
  if (!sentence.startsWith(said)) return sentence;
  return `${sentence.charAt(said.length).toUpperCase()}${sentence.slice(said.length + 1)}`;
}

/** @param before how they stood, for the way back */
export async function settle({ jobId, handId, name }: Named, dates: string[], state: HandState, before: HandState): Promise<void> {
  const settled = await deed(() => client.hands.settle({ jobId, handId, dates, state, key: crypto.randomUUID() }));
  if (!settled) return;
  const back = () => client.hands.settle({ jobId, handId, dates, state: before, key: crypto.randomUUID() });
  sayWithUndo(`${name} ${WORDS[state]}: ${shortDates(dates)}.`, 'Take it back', back, 'It stands as before.');
}

/** Put the message on the clipboard and note that they were asked. */
export async function askFor({ jobId, handId, name }: Named, dates: string[], message: string): Promise<boolean> {
  const copied = await copyText(message);
  const asked = await deed(() => client.hands.ask({ jobId, handId, dates, key: crypto.randomUUID() }));
  if (!asked) return false;
  say(
    copied
      ? `Copied. Paste it into a message to ${name}; nothing is booked until they say yes.`
      : `${name} is noted as asked. The message: ${message}`,
  );
  return true;
}
