import type { Role } from '../contract/parts.ts';

/** What somebody covers: "to cover the shoot". */
export const rolesInWords: Readonly<Record<Role, string>> = {
  shoot: 'the shoot',
  'second camera': 'the second camera',
  'vision mixing': 'vision mixing',
  livestream: 'the livestream',
  'edit only': 'the edit',
  photo: 'the photos',
  audio: 'the audio',
  other: 'the work',
};
