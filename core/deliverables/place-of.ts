/** How many values, which are in order, lie before another: its place among them. */
export function placeOf(values: readonly number[], value: number): number {
  let [low, high] = [0, values.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((values[middle] ?? Infinity) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
