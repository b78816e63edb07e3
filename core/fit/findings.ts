/**
 * What findings have in common: their order, whom they concern, and how a pencil softens them.
 */
import type { Finding, FitResult, Hardness } from '../contract/fit.ts';
import type { BookJob } from './book.ts';
import type { Standing } from './lane.ts';

const ORDER: readonly Hardness[] = ['blocks', 'settle', 'know'];

/** Against a pencil nothing is harder than "must be settled", and "good to know" where that pencil stands behind or is let stand first. */
export function softened(hardness: Hardness, standing: Standing): Hardness {
  if (standing === 'behind' || standing === 'first') return 'know';
  return standing === 'outranks' && hardness === 'blocks' ? 'settle' : hardness;
}

export function concerning(...jobs: readonly BookJob[]): Finding['concerns'] {
  return jobs.map(({ id, title }) => ({ jobId: id, title }));
}

/** Hardest first, otherwise in the order given; one that is said twice is said once. */
export function inOrder(findings: readonly Finding[]): Finding[] {
  const once = findings.filter(
    (finding, index) => findings.findIndex((other) => other.sentence === finding.sentence && other.kind === finding.kind) === index,
  );
  return once.sort((a, b) => ORDER.indexOf(a.hardness) - ORDER.indexOf(b.hardness));
}

/** How good an answer is; higher is worse. */
export const WORSE: Readonly<Record<FitResult['answer'], number>> = { free: 0, 'free if': 1, 'not possible': 2 };

export function answerOf(findings: readonly Finding[]): FitResult['answer'] {
  if (findings.some((finding) => finding.hardness === 'blocks')) return 'not possible';
  return findings.some((finding) => finding.hardness === 'settle') ? 'free if' : 'free';
}
