import { useQuery } from '@tanstack/react-query';
import { countInWords } from '../../../core/words/amounts.ts';
import { snapshot } from '../../actions/snapshot.ts';
import { ask } from '../../ask.ts';
import { snapshotInWords } from '../../foot.tsx';
import { ActionButton } from '../../parts/action-button.tsx';
import style from './setup.module.css';

/** Where everything lies, and its newest snapshot. */
export function StoreState() {
  const { data } = useQuery(ask.store.state.queryOptions({ input: {} }));
  if (!data) return null;
  return (
    <>
      <dl className={style.figures}>
        <dt>Folder</dt>
        <dd className={style.mono}>{data.folder}</dd>
        <dt>Newest snapshot</dt>
        <dd>
          {data.lastSnapshot
            ? `${snapshotInWords(data.lastSnapshot.takenAt)}, of ${countInWords(data.snapshots, 'snapshot')} kept`
            : 'none yet; the first is written with the day'}
        </dd>
        <dt>Version</dt>
        <dd>{`Kitbound ${data.version}, store ${data.schema}, SQLite ${data.sqlite}`}</dd>
      </dl>
      <div className={style.row}>
        <ActionButton action={snapshot} />
        <span className={style.second}>Copy the folder's snapshots to a second disk now and then.</span>
      </div>
    </>
  );
}
