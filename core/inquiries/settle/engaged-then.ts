/**
 * The day on which a couple got engaged, which their wedding is not: "we got engaged on New Year's Eve!", "on Valentine's Day he proposed".
 */
import { clauseBefore, clauseBehind } from '../parts/sentences.ts';
import type { Where } from './scene.ts';

const ENGAGED = String.raw`(?:(?:got|became|were|was|being) (?:\w+ )?engaged|proposed|popped the question|said yes|gave me the ring|put a ring on)`;
const BEFORE = new RegExp(String.raw`\b${ENGAGED}\b(?! and\b)(?:(?!\b(?:wedding|marry|married|party)\b)[^.!?\n]){0,40}$`, 'i');
const BEHIND = new RegExp(String.raw`^,? (?:(?:we|i|s?he|\p{Lu}\p{L}+|my \p{L}+) )?(?:\w+ )?${ENGAGED}\b`, 'iu');
const REACH = 70;

export const engagedThen = (text: string, { start, end }: Where): boolean =>
  BEFORE.test(clauseBefore(text, start, REACH)) || BEHIND.test(clauseBehind(text, end, REACH));
