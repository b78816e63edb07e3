import { useQuery } from '@tanstack/react-query';
import type { Way } from '../../../core/contract/trips.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { ask } from '../../ask.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { Fold } from '../../parts/fold.tsx';
import { sayWithUndo } from '../../undo.ts';
import style from './trip.module.css';

/** Ways that were typed once and are used on every job, in both directions, until they are forgotten. */
export function RememberedWays() {
  const ways = useQuery(ask.trips.ways.queryOptions({ input: {} })).data?.ways ?? [];
  if (ways.length === 0) return null;
  return (
    <Fold title={<span className={style.second}>{`Remembered ways, ${ways.length}`}</span>}>
      <ul className={style.legs}>
        {ways.map((way) => (
          <WayRow key={way.id} way={way} />
        ))}
      </ul>
    </Fold>
  );
}

function WayRow({ way }: { way: Way }) {
  const { running } = useDeeds();
  const names = `${way.mode} ${way.from.name} to ${way.to.name}`;
  const forget = async (): Promise<void> => {
    const { id, version, ...fields } = way;
    const gone = await deed(() => client.trips.forgetWay({ id, version }));
    if (gone)
      sayWithUndo(
        `The ${names} is forgotten; the estimate is used.`,
        'Remember it',
        () => client.trips.setWay({ fields }),
        `The ${names} is used again.`,
      );
  };
  return (
    <li className={style.leg}>
      <span>
        {`${names}, ${lengthInWords(way.minutes)}`} <span className={style.second}>{way.note}</span>
      </span>
      <Button kind="quiet" isDisabled={running > 0} onPress={() => void forget()} aria-label={`Forget the ${names}`}>
        Forget
      </Button>
    </li>
  );
}
