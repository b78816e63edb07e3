import type { ImportRow } from '../../core/contract/people.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { useDeeds } from '../deeds.ts';
import { Button } from './button.tsx';
import { FateTable, fatesInWords } from './fate-table.tsx';
import look from './list.module.css';

/** What a file that was tried would bring in, the button that does it, and how many came in. */
export function TriedFile({
  tried,
  added,
  what,
  path,
  onBring,
}: {
  tried: { file: { name: string }; rows: ImportRow[] } | null;
  /** How many were brought in, once they were. */
  added: number | null;
  /** One of them, in words. */
  what: string;
  /** The place that lists them. */
  path: string;
  onBring: () => void;
}) {
  const { running } = useDeeds();
  const fresh = tried?.rows.filter((row) => row.fate === 'new').length ?? 0;
  return (
    <div aria-live="polite" className={look.steps}>
      {added === null ? null : (
        <p>
          <strong>{`${countInWords(added, what)} brought in.`}</strong> <a href={`#${path}`}>Look at the list.</a>
        </p>
      )}
      {tried ? (
        <>
          <p>
            <strong>{tried.file.name}</strong>: {fatesInWords(tried.rows)}.
          </p>
          {fresh > 0 ? (
            <div>
              <Button kind="black" isDisabled={running > 0} onPress={onBring}>
                {`Bring in ${fresh}`}
              </Button>
            </div>
          ) : null}
          <FateTable rows={tried.rows} />
        </>
      ) : null}
    </div>
  );
}
