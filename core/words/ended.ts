/** A sentence with one full stop at its end, also behind a name that brings its own ("Inc."). */
export function ended(sentence: string): string {
  return sentence.endsWith('.') ? sentence : `${sentence}.`;
}
