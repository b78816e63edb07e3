/**
 * What whoever hands files over, or is handed them, should know. Plain, and never a permission.
 */

/** @param how whether a link or a disk carries the files @param kept whether originals are kept to a date */
export function handOverCautions(how: 'link' | 'disk'): string[] {
  return [
    how === 'link'
      ? 'Whoever has the link can have the files: pass it on with care.'
      : 'A disk can fail or be lost: copy the files and check the copy before the originals go.',
    'Faces, voices and names in the files are personal data, of children above all, and music heard in the room may need a licence: whoever shows them answers for it.',
  ];
}
