import type { KitItem } from '../../../core/contract/kit.ts';
import { airOf } from '../../../core/kit/air.ts';
import { weightInWords } from '../../../core/kit/measures.ts';
import table from '../../parts/table.module.css';
import { energyInWords, serviceInWords } from './in-words.ts';
import look from '../../parts/list.module.css';
import style from './kit.module.css';
import { Where } from './where.tsx';

/** Things with where they are, and whether they fly. */
export function ItemTable({ items }: { items: readonly KitItem[] }) {
  const today = Temporal.Now.plainDateISO().toString();
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Thing</th>
            <th scope="col" className={table.figures}>
              How many
            </th>
            <th scope="col">Where it is now</th>
            <th scope="col">By air</th>
            <th scope="col" className={table.figures}>
              Each
            </th>
            <th scope="col">Next service</th>
          </tr>
        </thead>
        <tbody>
          {items.map((item) => (
            <tr key={item.id}>
              <th scope="row">
                <a href={`#/kit/thing/${item.id}`}>{item.name}</a>
                <span className={table.second}>{` ${[item.does, item.owner === 'own' ? '' : item.owner].filter(Boolean).join(', ')}`}</span>
              </th>
              <td className={table.figures}>{item.owned}</td>
              <td className={style.where}>
                <Where id={item.id} />
              </td>
              <td>
                <ByAir item={item} />
              </td>
              <td className={table.figures}>{item.grams === null ? '' : weightInWords(item.grams)}</td>
              <td>
                {allServices(item)
                  .filter(({ to }) => to >= today)
                  .sort((a, b) => (a.from < b.from ? -1 : 1))
                  .slice(0, 1)
                  .map(serviceInWords)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const allServices = ({ services, units }: KitItem) => [
  ...services,
  ...units.flatMap((unit) => unit.services.map((span) => ({ ...span, count: 1 }))),
];

function ByAir({ item }: { item: KitItem }) {
  const { words, barred } = airOf(item);
  if (words === '') return null;
  return (
    <>
      <span className={barred ? look.broken : undefined}>{words}</span> <span className={table.second}>{energyInWords(item)}</span>
    </>
  );
}
