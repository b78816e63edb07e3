/**
 * A heap: what comes first by an order is at hand at once, and putting in or taking out costs the logarithm of what is in it.
 * It is a plain array, first at the front; the order of the rest is nobody's business.
 */

/** Below zero where `a` comes first. */
type Order<T> = (a: T, b: T) => number;

/** Put an item in. */
export function push<T>(heap: T[], item: T, order: Order<T>): void {
  let at = heap.length;
  heap.push(item);
  while (at > 0) {
    const above = (at - 1) >> 1;
    if (order(heap[above] as T, item) <= 0) break;
    heap[at] = heap[above] as T;
    at = above;
  }
  heap[at] = item;
}

/** Take out what comes first; undefined where nothing is left. */
export function pop<T>(heap: T[], order: Order<T>): T | undefined {
  const first = heap[0];
  const item = heap.pop();
  if (heap.length === 0) return first;
  let at = 0;
  for (;;) {
    let below = 2 * at + 1;
    if (below >= heap.length) break;
    if (below + 1 < heap.length && order(heap[below + 1] as T, heap[below] as T) < 0) below += 1;
    if (order(item as T, heap[below] as T) <= 0) break;
    heap[at] = heap[below] as T;
    at = below;
  }
  heap[at] = item as T;
  return first;
}
