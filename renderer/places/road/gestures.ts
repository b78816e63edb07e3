/** Wheel, drag and pinch on the road, and dragging what is laid on it, as movements of the view and whole days. */
import { DAY_MS } from '../../../core/road/view.ts';
import type { MovingView } from './moving-view.ts';

export type Ground = {
  view: MovingView;
  /** Pixels between which the drawing has its ground, from the left of the element. */
  ground: () => { left: number; right: number };
  /** What is laid on: how far it stands now, and where to tell how far it is dragged; nothing where nothing is laid on. */
  laid: () => { shift: number; move: (shift: number) => void } | null;
};

/** Marks what can be dragged by days. */
export const DRAGGED = 'data-laid';
const LINE_PIXELS = 16;
const LONGEST_TURN = 60;

/** Listen on an element. @returns what stops it */
export function listen(element: Element, ground: Ground): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  const hands = new Map<number, number>();
  let dragged: { from: number; shift: number; id: number } | null = null;

  const scale = (): number => {
    const { left, right } = ground.ground();
    const { start, end } = ground.view.now();
    return (end - start) / Math.max(1, right - left);
  };
  const xOf = (event: { clientX: number }): number => event.clientX - element.getBoundingClientRect().left;
  const instantAt = (x: number): number => ground.view.now().start + (x - ground.ground().left) * scale();

  const onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    const unit = event.deltaMode === 1 ? LINE_PIXELS : 1;
    if (event.ctrlKey || event.metaKey) {
      const turn = Math.max(-LONGEST_TURN, Math.min(LONGEST_TURN, event.deltaY * unit));
      ground.view.zoom(Math.exp(turn * 0.008), instantAt(xOf(event)));
    } else ground.view.pan((event.deltaX + event.deltaY) * unit * scale());
  };

  const onDown = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const laid = ground.laid();
    const onLaid = event.target instanceof Element && event.target.closest(`[${DRAGGED}]`) !== null;
    if (laid && onLaid && hands.size === 0) dragged = { from: event.clientX, shift: laid.shift, id: event.pointerId };
    else hands.set(event.pointerId, xOf(event));
    element.setPointerCapture(event.pointerId);
  };

  const onMove = (event: PointerEvent): void => {
    if (dragged?.id === event.pointerId) {
      const days = Math.round(((event.clientX - dragged.from) * scale()) / DAY_MS);
      ground.laid()?.move(dragged.shift + days);
      return;
    }
    const before = hands.get(event.pointerId);
    if (before === undefined) return;
    const x = xOf(event);
    const other = [...hands].find(([id]) => id !== event.pointerId)?.[1];
    if (other === undefined) ground.view.pan((before - x) * scale());
    else {
      // Two fingers: what lies under each of them stays under it.
      const times = Math.max(4, Math.abs(before - other)) / Math.max(4, Math.abs(x - other));
      ground.view.zoom(times, instantAt(other));
    }
    hands.set(event.pointerId, x);
  };

  const onUp = (event: PointerEvent): void => {
    hands.delete(event.pointerId);
    if (dragged?.id === event.pointerId) dragged = null;
  };

  element.addEventListener('wheel', onWheel as EventListener, { signal, passive: false });
  element.addEventListener('pointerdown', onDown as EventListener, { signal });
  element.addEventListener('pointermove', onMove as EventListener, { signal });
  element.addEventListener('pointerup', onUp as EventListener, { signal });
  element.addEventListener('pointercancel', onUp as EventListener, { signal });
  return () => stop.abort();
}
