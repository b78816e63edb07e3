import { useQuery } from '@tanstack/react-query';
import { epochOf } from '../../../core/time/read.ts';
import { momentAt } from '../../../core/words/moments.ts';
import { ask } from '../../ask.ts';
import { whereInWords } from './in-words.ts';

/** Where the units of one thing are at this moment, on the clock at home. */
export function Where({ id }: { id: string }) {
  const { data } = useQuery(ask.kit.whereabouts.queryOptions({ input: {} }));
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  const found = data?.items.find((item) => item.id === id);
  const zone = setup.data?.setup?.home.zone ?? setup.data?.suggestedZone ?? 'UTC';
  return found ? <>{whereInWords(found, (instant) => momentAt(epochOf(instant), { zone }, { zone }))}</> : null;
}
