/** How something was said, behind its verb: "by mail" whether "mail" or "by mail" was typed. */
export function byHow(how: string): string {
  const bare = how.trim().replace(/^by\s+/i, '');
  return bare === '' ? '' : `by ${bare}`;
}
