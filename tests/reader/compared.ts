/** A value as it is compared: in small letters, without an article before it or a stop behind it. */
export const lower = (value: unknown): string =>
  String(value)
    .toLowerCase()
    .replace(/^the /, '')
    .replace(/[.\s]+$/, '');
