import { useEffect, useRef, type ReactNode } from 'react';
import { isSingleKey, pressed } from './actions/action.ts';
import { actions } from './actions/all.ts';
import { clearSlip } from './deeds.ts';
import { Foot } from './foot.tsx';
import { singleKeys } from './look/choices.ts';
import { RunningClock } from './running-clock.tsx';
import { sceneNow } from './scene.ts';
import { Slip } from './slip.tsx';
import style from './frame.module.css';

const places = [
  { path: '/', name: 'Desk' },
  { path: '/road', name: 'Road' },
  { path: '/jobs', name: 'Jobs' },
  { path: '/people', name: 'People' },
  { path: '/kit', name: 'Kit' },
  { path: '/rates', name: 'Rates' },
  { path: '/ledger', name: 'Ledger' },
  { path: '/setup', name: 'Setup' },
] as const;

/** Where keys mean what the part under them says. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('input, textarea, select, [role=listbox]') !== null;

/** Where text is written, so that taking back means the last letters. Ticks take no letters. */
const isWriting = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('input:not([type=checkbox], [type=radio]), textarea') !== null;

function onKey(event: KeyboardEvent): void {
  const action = actions.find((each) => each.shortcut && pressed(each.shortcut, event) && each.when(sceneNow()));
  const shortcut = action?.shortcut;
  if (!shortcut || event.defaultPrevented) return;
  const bare = !/^(Ctrl|Alt)\+/.test(shortcut);
  if (action.outsideFields && isWriting(event.target)) return;
  if ((bare && isTyping(event.target)) || (isSingleKey(shortcut) && singleKeys.get() === 'off')) return;
  event.preventDefault();
  void action.perform(sceneNow());
}

/** The sheet that every place is shown on: the places above, the foot rule below, and the keyboard. */
export function Frame({ path, children }: { path: string; children: ReactNode }) {
  const main = useRef<HTMLElement>(null);
  const here = places.findLast((place) => path === place.path || path.startsWith(`${place.path}/`)) ?? places[0];

  useEffect(() => {
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);

  useEffect(() => {
    document.title = `${here.name} · Kitbound`;
  }, [here.name]);

  useEffect(() => {
    const onMove = (): void => {
      main.current?.scrollTo(0, 0);
      clearSlip();
    };
    window.addEventListener('hashchange', onMove);
    return () => window.removeEventListener('hashchange', onMove);
  }, []);

  return (
    <div className={style.frame}>
      <header className={style.head}>
        <a className={style.skip} href={`#${path}`} onClick={() => main.current?.focus()}>
          Skip to the page
        </a>
        <span className={style.name}>Kitbound</span>
        <nav aria-label="Places" className={style.places}>
          {places.map((place) => (
            <a key={place.path} href={`#${place.path}`} aria-current={place === here ? 'page' : undefined}>
              {place.name}
            </a>
          ))}
        </nav>
        <RunningClock />
      </header>
      <main className={style.main} ref={main} tabIndex={-1}>
        {children}
      </main>
      <Slip />
      <Foot />
    </div>
  );
}
