import { clearSlip, useDeeds } from './deeds.ts';
import { Button } from './parts/button.tsx';
import { TroubleNote } from './parts/trouble-note.tsx';
import style from './slip.module.css';

/** One slip above the foot rule: what the last deed came to. */
export function Slip() {
  const { trouble, said, back } = useDeeds();
  return (
    <div className={style.slip} aria-live="polite">
      {trouble || said ? (
        <div className={style.inside}>
          {trouble ? <TroubleNote trouble={trouble} /> : <p>{said}</p>}
          {back ? <Button onPress={() => void back.perform()}>{back.label}</Button> : null}
          <Button kind="quiet" onPress={clearSlip}>
            Close
          </Button>
        </div>
      ) : null}
    </div>
  );
}
