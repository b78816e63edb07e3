/** A list as a person says it: "a, b and c". */
export function joined(words: readonly string[], last = 'and'): string {
  const final = words.at(-1) ?? '';
  return words.length < 2 ? final : `${words.slice(0, -1).join(', ')} ${last} ${final}`;
}
