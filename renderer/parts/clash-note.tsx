import { Button } from './button.tsx';
import style from './clash-note.module.css';
import table from './table.module.css';

/** Something that is kept, as words under its label. */
export type Said = { label: string; text: string };

/** What two states differ in. */
function differing(theirs: readonly Said[], mine: readonly Said[]): { label: string; theirs: string; mine: string }[] {
  return theirs.flatMap(({ label, text }, at) => {
    const own = mine[at]?.text ?? '';
    return own === text ? [] : [{ label, theirs: text, mine: own }];
  });
}

/** Somebody saved meanwhile: both states side by side where they differ, and the choice between them. */
export function ClashNote(props: { name: string; theirs: Said[]; mine: Said[]; onTheirs: () => void; onMine: () => void }) {
  const differences = differing(props.theirs, props.mine);
  return (
    <section className={style.clash} role="alert" aria-label="Changed elsewhere meanwhile">
      <p>
        <strong className={style.what}>{`${props.name} was changed elsewhere meanwhile.`}</strong>{' '}
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
                  <td className={style.state}>{each.theirs || '(empty)'}</td>
                  <td className={style.state}>{each.mine || '(empty)'}</td>
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
