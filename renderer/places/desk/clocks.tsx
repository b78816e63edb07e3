import type { Clock } from '../../../core/contract/desk.ts';
import type { Moment } from '../../../core/contract/parts.ts';
import { partedByNeed } from '../../../core/desk/needed.ts';
import { whenWords } from '../../../core/desk/when.ts';
import { epochOf } from '../../../core/time/read.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { wallInWords, zoneInWords } from '../../../core/words/dates.ts';
import { nearness, timeLeft } from '../../../core/words/left.ts';
import { stopFor } from '../../actions/stop-clock.ts';
import { useDeeds } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import { Fold } from '../../parts/fold.tsx';
import style from './clocks.module.css';

/** The clock whose action is the thing to do next: the least time left that is not late, else the oldest late one. */
function nextOf(clocks: readonly Clock[]): Clock | undefined {
  return clocks.find((clock) => !clock.late) ?? clocks[0];
}

type Ruler = { clocks: readonly Clock[]; before?: Clock | undefined; next: Clock | undefined; now: Moment };

/** Every running clock on a ruler of time left, late on top; what is long late or does not bite by tomorrow is folded. */
export function Clocks({ clocks, now, quiet }: { clocks: readonly Clock[]; now: Moment; quiet: boolean }) {
  const present = epochOf(now.at);
  const next = quiet ? undefined : nextOf(clocks);
  const { older, near, later } = partedByNeed(clocks, present, now.zone);
  const [oldest] = older;
  const [first] = later;
  return (
    <section aria-labelledby="bites-next">
      <h2 id="bites-next" className={style.head}>
        What bites next <span className={style.second}>{`${wallInWords(now.wall)} in ${zoneInWords(now.zone)}`}</span>
      </h2>
      {clocks.length === 0 ? <p className={style.empty}>No clock is running. The next inquiry starts one: paste it above.</p> : null}
      {oldest ? (
        <Fold
          title={
            <span
              className={style.piled}
            >{`${older.length} more late, the first since ${whenWords(epochOf(oldest.at), now.zone, present)}`}</span>
          }
        >
          <Ruler clocks={older} next={next} now={now} />
        </Fold>
      ) : null}
      <Ruler clocks={near} before={older.at(-1)} next={next} now={now} />
      {first ? (
        <Fold title={`${countInWords(later.length, 'later clock')}, the next ${whenWords(epochOf(first.at), now.zone, present)}`}>
          <Ruler clocks={later} before={near.at(-1)} next={next} now={now} />
        </Fold>
      ) : null}
    </section>
  );
}

function Ruler({ clocks, before, next, now }: Ruler) {
  const { running } = useDeeds();
  const present = epochOf(now.at);
  return (
    <ol className={style.ruler}>
      {clocks.map((clock, index) => {
        const near = nearness(epochOf(clock.at), present, now.zone);
        const above = clocks[index - 1] ?? before;
        const mark = near !== 'late' && (!above || nearness(epochOf(above.at), present, now.zone) !== near) ? near : null;
        const stop = stopFor(clock);
        return (
          <li key={clock.id} className={`${style.clock} ${clock.late ? style.late : ''}`}>
            {mark ? <p className={style.mark}>{mark}</p> : null}
            <p className={style.left}>{timeLeft(epochOf(clock.at), present)}</p>
            <KindMark kind={clock.kind} late={clock.late} />
            <div className={style.words}>
              <p>{clock.sentence}</p>
              {clock.second ? <p className={style.second}>{clock.second}</p> : null}
            </div>
            <Button
              kind={clock === next ? 'black' : 'plain'}
              isDisabled={running > 0}
              onPress={() => void stop.perform(clock)}
              aria-label={`${stop.label}: ${clock.sentence}`}
            >
              {stop.label}
            </Button>
          </li>
        );
      })}
    </ol>
  );
}

function KindMark({ kind, late }: { kind: Clock['kind']; late: boolean }) {
  return (
    <svg className={style.kind} viewBox="0 0 14 14" aria-hidden>
      {late ? (
        <path className={style.diamond} d="M7 1 13 7 7 13 1 7Z" />
      ) : kind === 'call' ? (
        <rect className={style.solid} x="3" y="2" width="8" height="10" />
      ) : kind === 'pencil' || kind === 'challenge' || kind === 'ran out' ? (
        <rect className={style.dashed} x="2" y="3" width="10" height="8" />
      ) : (
        <circle className={style.open} cx="7" cy="7" r="4.5" />
      )}
    </svg>
  );
}
