import { useQuery } from '@tanstack/react-query';
import { ask } from '../../ask.ts';
import style from './quote.module.css';

/** What the next version would change against the newest made one, in words. */
export function Differences({ jobId, newest }: { jobId: string; newest: number }) {
  const asked = useQuery(ask.quotes.differences.queryOptions({ input: { jobId, from: newest, to: null } }));
  if (!asked.data) return null;
  const { sentences } = asked.data;
  return (
    <ul className={`${style.terms} ${style.differences}`}>
      {sentences.length === 0 ? <li>{`Nothing differs from version ${newest}.`}</li> : null}
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
