import { useQuery } from '@tanstack/react-query';
import { hoursTogether } from '../../../../core/deliverables/blank.ts';
import { numbersNamed } from '../../../../core/deliverables/from-quote.ts';
import { asPastTook } from '../../../../core/deliverables/past.ts';
import { formatNumber } from '../../../../core/money/format.ts';
import { ask } from '../../../ask.ts';
import { Button } from '../../../parts/button.tsx';
import style from './rounds.module.css';

/** The hours that a thing takes by the template that its words name, and as past edits took; nothing where they name none. */
export function HoursHint({ words, onTake }: { words: string; onTake: (hours: string) => void }) {
  const templates = useQuery(ask.templates.list.queryOptions({ input: {} })).data?.templates ?? [];
  const named = numbersNamed(words, templates);
  const templateId = named?.template.id ?? '';
  const past = useQuery({ ...ask.spent.past.queryOptions({ input: { templateId } }), enabled: named !== null }).data?.past;
  if (!named) return null;
  const offers = [
    { hours: hoursTogether(named.numbers), from: `by the template ${named.template.name}` },
    ...(past && past.edits > 0 ? [{ hours: hoursTogether(asPastTook(named.numbers, past)), from: 'as past edits took' }] : []),
  ];
  return (
    <div className={style.read}>
      {offers.map(({ hours, from }) => (
        <p key={from} className={style.buttons}>
          <span className={style.second}>{`${formatNumber(hours)} h ${from}.`}</span>
          <Button kind="quiet" onPress={() => onTake(hours)} aria-label={`Take it: ${formatNumber(hours)} h ${from}`}>
            Take it
          </Button>
        </p>
      ))}
      {past?.sentences.map((sentence) => (
        <p key={sentence} className={style.second}>
          {sentence}
        </p>
      ))}
    </div>
  );
}
