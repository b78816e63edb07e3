import type { Trouble } from '../../core/contract/base.ts';
import style from './trouble-note.module.css';

const sentence = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`);

/** What happened, what was kept, what to do; with the sentences of the rules that refused. */
export function TroubleNote({ trouble }: { trouble: Trouble }) {
  return (
    <div className={style.note} role="alert">
      <strong className={style.what}>{sentence(trouble.what)}</strong> {sentence(trouble.kept)} {sentence(trouble.todo)}
      {trouble.findings && trouble.findings.length > 0 ? (
        <ul className={style.findings}>
          {trouble.findings.map((finding) => (
            <li key={finding}>{finding}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}
