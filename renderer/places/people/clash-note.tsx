import { Button } from '../../parts/button.tsx';
import table from '../../parts/table.module.css';
import { differing, type Said } from './in-words.ts';
import style from './people.module.css';

/** Somebody saved meanwhile: both states side by side where they differ, and the choice between them. */
export function ClashNote(props: { name: string; theirs: Said[]; mine: Said[]; onTheirs: () => void; onMine: () => void }) {
  const differences = differing(props.theirs, props.mine);
  return (
    <section className={style.clash} role="alert" aria-label="Changed elsewhere meanwhile">
      <p>
        <strong className={style.broken}>{`${props.name} was changed elsewhere meanwhile.`}</strong>{' '}
        {differences.length === 0
          ? 'Both states are the same; either will do.'
          : 'The stored state was kept; yours is still here. Choose which of them stands.'}
      </p>
      {differences.length > 0 ? (
        <div className={table.scroll}>
          <table className={table.table}>
            <thead>
              <tr>
                <th scope="col">What differs</th>
                <th scope="col">Stored now</th>
                <th scope="col">Typed here</th>
              </tr>
            </thead>
            <tbody>
              {differences.map((each) => (
                <tr key={each.label}>
                  <th scope="row">{each.label}</th>
                  <td className={style.long}>{each.theirs || '(empty)'}</td>
                  <td className={style.long}>{each.mine || '(empty)'}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ) : null}
      <div className={style.buttons}>
        <Button onPress={props.onTheirs}>Take what is stored</Button>
        <Button onPress={props.onMine}>Keep what is typed here</Button>
      </div>
    </section>
  );
}
