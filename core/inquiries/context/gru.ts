/**
 * A gated recurrent unit: it goes along the words and carries what it has read with it
 * (Cho et al., Learning Phrase Representations using RNN Encoder-Decoder, 2014, section 2.3; the reset gate stands after the product, as in most
 * libraries: n = tanh(Wx + b + r (Uh + c))).
 */

export type Gru = {
  /** Three gates (reset, update, new) by what comes in, and by what is carried: row by row. */
  input: Float32Array;
  carried: Float32Array;
  inputBias: Float32Array;
  carriedBias: Float32Array;
};

/** What the unit was at every word: what it carried on, and its gates, which learning needs. */
export type Course = { state: Float32Array; reset: Float32Array; update: Float32Array; fresh: Float32Array; inner: Float32Array };

/** `out[at + row] += matrix[row] · vector[from ..]` for every row. */
export function addProduct(
  out: Float32Array,
  at: number,
  matrix: Float32Array,
  rows: number,
  columns: number,
  vector: Float32Array,
  from: number,
): void {
  for (let row = 0, cell = 0; row < rows; row++) {
    let [a, b, c, d] = [0, 0, 0, 0];
    let column = 0;
    for (; column + 3 < columns; column += 4, cell += 4) {
      a += (matrix[cell] as number) * (vector[from + column] as number);
      b += (matrix[cell + 1] as number) * (vector[from + column + 1] as number);
      c += (matrix[cell + 2] as number) * (vector[from + column + 2] as number);
      d += (matrix[cell + 3] as number) * (vector[from + column + 3] as number);
    }
    for (; column < columns; column++, cell++) a += (matrix[cell] as number) * (vector[from + column] as number);
    out[at + row] = (out[at + row] as number) + a + b + c + d;
  }
}

const sigmoid = (x: number): number => 1 / (1 + Math.exp(-x));

/**
 * Read a row of words.
 * @param words word after word, each of `width` numbers
 * @param size how many numbers it carries
 * @param backwards from the last word to the first
 */
export function runGru(gru: Gru, words: Float32Array, width: number, size: number, backwards: boolean): Course {
  const count = words.length / width;
  const [state, reset, update, fresh, inner] = Array.from({ length: 5 }, () => new Float32Array(count * size)) as [
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  const [gates, kept] = [new Float32Array(3 * size), new Float32Array(3 * size)];
  const none = new Float32Array(size);
  for (let step = 0; step < count; step++) {
    const word = backwards ? count - 1 - step : step;
    const [last, from] = step === 0 ? [none, 0] : [state, (backwards ? word + 1 : word - 1) * size];
    gates.set(gru.inputBias);
    kept.set(gru.carriedBias);
    addProduct(gates, 0, gru.input, 3 * size, width, words, word * width);
    if (step > 0) addProduct(kept, 0, gru.carried, 3 * size, size, last, from);
    const own = word * size;
    for (let unit = 0; unit < size; unit++) {
      const r = sigmoid((gates[unit] as number) + (kept[unit] as number));
      const z = sigmoid((gates[size + unit] as number) + (kept[size + unit] as number));
      const q = kept[2 * size + unit] as number;
      const n = Math.tanh((gates[2 * size + unit] as number) + r * q);
      reset[own + unit] = r;
      update[own + unit] = z;
      inner[own + unit] = q;
      fresh[own + unit] = n;
      state[own + unit] = (1 - z) * n + z * (last[from + unit] as number);
    }
  }
  return { state, reset, update, fresh, inner };
}
