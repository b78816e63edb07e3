import { useState } from 'react';
import type { Money } from '../../../core/contract/parts.ts';
import type { Leg, LegFields, ReadLeg } from '../../../core/contract/trips.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { wallInWords } from '../../../core/words/dates.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { useScene } from '../../scene.ts';
import { LegForm, sayKept } from './trip-leg-form.tsx';
import style from './ticket-reader.module.css';
import { blankLeg, typedLeg, type TypedLeg } from './typed-leg.ts';

type Props = { read: readonly ReadLeg[]; total: Money | null; legs: readonly Leg[]; jobId: string; currency: string; unit: 'mi' | 'km' };

/** The legs of a confirmation. One that is clear is kept by one press; one that asks is filled in first. */
export function ReadLegs({ read, total, legs, jobId, currency, unit }: Props) {
  const { running } = useDeeds();
  const { tryIt } = useScene();
  const [filling, setFilling] = useState<number | null>(null);
  // What was paid for one leg is its fare; what was paid for several is not shared out.
  const fare = read.length === 1 ? total : null;
  const keep = async (fields: LegFields): Promise<void> => {
    const kept = await deed(() => client.trips.setLeg({ jobId, fields }));
    if (kept) sayKept(kept.leg, undefined);
  };
  return (
    <div>
      <ol className={style.legs} aria-label="Legs that were read">
        {read.map((leg, order) => {
          const fields = fieldsOf(leg, fare);
          const name = nameOf(leg);
          const isKept = legs.some((other) => isOnTrip(leg, other));
          return (
            <li key={`${order} ${name}`}>
              <strong>{name}</strong>
              <span className={style.second}>{whenOf(leg)}</span>
              {leg.asks.map(({ field, question }) => (
                <p key={field} className={style.asked}>
                  {question}
                </p>
              ))}
              {isKept ? (
                <p className={style.kept}>It is on the trip.</p>
              ) : filling === order ? (
                <LegForm jobId={jobId} start={startOf(leg, fare, currency)} unit={unit} onDone={() => setFilling(null)} />
              ) : (
                <span className={style.buttons}>
                  {fields && leg.asks.length === 0 ? (
                    <Button
                      kind="plain"
                      isDisabled={running > 0}
                      onPress={() => void keep(fields)}
                      aria-label={`Keep as ticketed: ${name}`}
                    >
                      Keep as ticketed
                    </Button>
                  ) : null}
                  {fields && tryIt && leg.asks.length === 0 ? (
                    <Button
                      kind="quiet"
                      onPress={() => tryIt({ kind: 'ticket', label: `As if ticketed: ${name}`, tryOn: { legs: [fields] } })}
                      aria-label={`Try it on: ${name}`}
                    >
                      Try it on
                    </Button>
                  ) : null}
                  <Button
                    kind="quiet"
                    onPress={() => setFilling(order)}
                    aria-label={`${leg.asks.length > 0 ? 'Fill it in' : 'Change it first'}: ${name}`}
                  >
                    {leg.asks.length > 0 ? 'Fill it in' : 'Change it first'}
                  </Button>
                </span>
              )}
            </li>
          );
        })}
      </ol>
      {total && read.length > 1 ? (
        <p className={style.second}>{formatMoney(total, { code: true })} was paid for all of it; it is not shared out over the legs.</p>
      ) : null}
    </div>
  );
}

/** "flight ZQ 412 Duluth to Chicago"; what is not known is told as such. */
function nameOf({ mode, number, from, to }: ReadLeg): string {
  return [mode ?? 'leg', number ?? '', from?.name ?? '?', 'to', to?.name ?? '?'].filter((part) => part !== '').join(' ');
}

/** Empty where neither end is clear: what is asked says so. */
function whenOf({ depart, arrive, berth }: ReadLeg): string {
  if (depart === null && arrive === null) return berth ? 'berth' : '';
  const sameDate = depart !== null && arrive?.startsWith(depart.slice(0, 10));
  const ends = `${depart === null ? 'departure not clear' : wallInWords(depart)} to ${arrive === null ? 'arrival not clear' : sameDate ? arrive.slice(11) : wallInWords(arrive)}`;
  return berth ? `${ends}, berth` : ends;
}

/** The leg as it would be kept; null while something of it is not known. */
function fieldsOf({ mode, number, from, to, depart, arrive, berth }: ReadLeg, fare: Money | null): LegFields | null {
  if (!mode || !from || !to || !depart || !arrive) return null;
  return { mode, from, to, depart, arrive, source: 'ticketed', before: null, after: null, berth, cost: '', fare, note: number ?? '' };
}

/** What was read, to be completed by hand. */
function startOf(leg: ReadLeg, fare: Money | null, currency: string): TypedLeg {
  const blank = blankLeg(leg.from, leg.to, fare?.currency ?? currency);
  const fields = fieldsOf(leg, fare);
  if (fields) return typedLeg(fields, currency);
  const { mode, depart, arrive, berth, number } = leg;
  return { ...blank, mode: mode ?? blank.mode, depart: depart ?? '', arrive: arrive ?? '', berth, note: number ?? '' };
}

/** Whether a leg of the trip is the one that was read, by what of it was read: the departure, else the number. */
function isOnTrip({ mode, number, from, to, depart }: ReadLeg, other: Leg): boolean {
  const agrees = (mine: string | null | undefined, theirs: string): boolean => !mine || mine === theirs;
  const sameWay = agrees(mode, other.mode) && agrees(from?.key, other.from.key) && agrees(to?.key, other.to.key);
  return sameWay && (depart === null ? number !== null && other.note === number : other.depart === depart);
}
