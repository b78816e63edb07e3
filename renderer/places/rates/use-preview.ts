import { skipToken, useQuery } from '@tanstack/react-query';
import type { Incomparable, PreviewRow, RateCard } from '../../../core/contract/rates.ts';
import { ask } from '../../ask.ts';
import { useSettled } from '../../parts/use-settled.ts';
import { troubleOf } from '../../trouble.ts';
import { fieldsFrom, typedFrom, type TypedCard } from './typed-card.ts';

export type Preview = { sentence: string; rows: readonly PreviewRow[]; apart: readonly Incomparable[] };

/** What the card as it is typed would do to the last quotes made from it; null for a new card and while nothing differs or it cannot be read. */
export function usePreview(typed: TypedCard, stored: RateCard | undefined): Preview | null {
  const settled = useSettled(typed);
  const read = fieldsFrom(settled);
  const changed = stored !== undefined && JSON.stringify(settled) !== JSON.stringify(typedFrom(stored));
  const fields = changed && 'fields' in read ? read.fields : null;
  const { data, error } = useQuery(
    ask.rates.preview.queryOptions({
      input: stored && fields ? { id: stored.id, fields } : skipToken,
      placeholderData: (before) => before,
    }),
  );
  if (!fields) return null;
  if (error) return { sentence: troubleOf(error).what, rows: [], apart: [] };
  return data ?? null;
}
