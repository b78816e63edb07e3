/**
 * A path as a person types, pastes or drags it.
 */
import { homedir } from 'node:os';
import { isAbsolute, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The absolute path that is meant, or a sentence about what was typed. Quotes around it, "~" and file: addresses are understood. */
export function typedPath(typed: string): { path: string } | { trouble: string } {
  const bare = unquoted(typed.trim());
  if (bare === '') return { trouble: 'is empty; type where the file or folder lies' };
  if (/^file:/i.test(bare)) return fromAddress(bare);
  const whole = bare === '~' || /^~[\\/]/.test(bare) ? join(homedir(), bare.slice(1)) : bare;
  if (!isAbsolute(whole)) return { trouble: 'is no whole path; begin at the top, as in /home/me/film.mov or D:\\film.mov' };
  return { path: normalize(whole) };
}

function unquoted(text: string): string {
  const quote = text[0];
  return text.length > 1 && (quote === '"' || quote === "'") && text.endsWith(quote) ? text.slice(1, -1) : text;
}

function fromAddress(address: string): { path: string } | { trouble: string } {
  try {
    return { path: normalize(fileURLToPath(address)) };
  } catch {
    return { trouble: 'is no address of a file on this computer' };
  }
}
