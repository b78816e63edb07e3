import { useQuery } from '@tanstack/react-query';
import { ask } from '../../ask.ts';
import style from './sender.module.css';

/** Who the sheet is from: on paper only, above the job's name. */
export function Sender() {
  const { data } = useQuery(ask.setup.get.queryOptions({ input: {} }));
  const mine = data?.setup;
  if (!mine) return null;
  const address = mine.address.split('\n').join(', ');
  return (
    <div className={style.sender}>
      <p className={style.name}>{mine.name}</p>
      <p>{[address, mine.email, mine.phone].filter((part) => part !== '').join(' · ')}</p>
    </div>
  );
}
