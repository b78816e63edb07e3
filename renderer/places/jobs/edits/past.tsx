import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../ask.ts';
import style from './rounds.module.css';

/** What finished edits of a template really took, for the next quote; nothing while none has time on record. */
export function Past({ templateId }: { templateId: string }) {
  const past = useQuery(ask.spent.past.queryOptions({ input: { templateId } })).data?.past;
  if (!past || past.sentences.length === 0) return null;
  return <p className={style.second}>{`Past edits: ${past.sentences.join(' ')}`}</p>;
}
