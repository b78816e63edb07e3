/**
 * The rows of the find box: what the store found and the actions that are offered now, in one order.
 */
import type { Found } from '../core/contract/find.ts';
import { standingOf } from '../core/find/rank.ts';
import { typedWords } from '../core/find/words.ts';
import type { Action } from './actions/action.ts';
import { actions } from './actions/all.ts';
import { deed } from './deeds.ts';
import { savePaper } from './parts/paper-file.ts';
import { sceneNow, type Scene } from './scene.ts';

export type Row = {
  id: string;
  title: string;
  /** What it is, and what tells it from others of its name. */
  second: string;
  why: string;
  /** The words that were met, to be marked. */
  words: readonly string[];
  grade: number;
  open: () => void;
};

function pathOf({ kind, id, jobId }: Found): string {
  if (kind === 'rate card') return `/rates/${id}`;
  if (kind === 'client' || kind === 'hand') return `/people/${kind}/${id}`;
  if (kind === 'thing' || kind === 'preset') return `/kit/${kind}/${id}`;
  return `/jobs/${jobId ?? id}`;
}

function open(found: Found): void {
  if (found.kind === 'paper') void deed(() => savePaper(found.id));
  else sceneNow().go(pathOf(found));
}

const foundRow = (found: Found): Row => ({
  id: `${found.kind} ${found.id}`,
  title: found.title,
  second: found.second === '' ? found.kind : `${found.kind} · ${found.second}`,
  why: found.why,
  words: found.words,
  grade: found.grade,
  open: () => open(found),
});

function actionRow(action: Action, scene: Scene, typed: readonly string[]): Row | undefined {
  const title = action.label(scene);
  const standing = standingOf(typed, { title, names: '', at: 0 }, 0);
  if (!standing) return undefined;
  const second = action.shortcut ? `action · ${action.shortcut}` : 'action';
  return {
    id: `action ${action.name}`,
    title,
    second,
    why: '',
    words: standing.words,
    grade: standing.grade,
    open: () => void action.perform(sceneNow()),
  };
}

/** The best first, what was found before an action of the same grade. What is only like the words is told where nothing holds them. */
export function rowsFor(text: string, found: readonly Found[], scene: Scene): Row[] {
  const typed = typedWords(text);
  const offered = actions
    .filter((action) => action.name !== 'find' && action.when(scene))
    .flatMap((action) => actionRow(action, scene, typed) ?? []);
  const rows = [...found.map(foundRow), ...offered].toSorted((a, b) => b.grade - a.grade);
  const holding = rows.filter(({ grade }) => grade >= 1);
  return holding.length > 0 ? holding : rows;
}
