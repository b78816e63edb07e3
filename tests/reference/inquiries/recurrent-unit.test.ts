/**
 * The gated recurrent unit of the reader's network against one that others built: three numbers in and two carried, its numbers rounded to
 * hundredths, reading three words from the front and from the back; run on 28 November 2026.
 * @source PyTorch Foundation, PyTorch 1.13.1 (as packaged for Debian 12), torch.nn.GRU, 2022
 */
import { expect, test } from 'vitest';
import { runGru, type Gru } from '../../../core/inquiries/context/gru.ts';

const unit: Gru = {
  input: Float32Array.of(
    0.07,
    -0.64,
    0.34,
    0.33,
    -0.57,
    -0.16,
    -0.62,
    0.28,
    -0.29,
    0.75,
    0.75,
    0.11,
    -0.45,
    -0.62,
    -0.12,
    -0.3,
    0.47,
    -0.91,
  ),
  carried: Float32Array.of(1, -0.83, 0.81, -0.18, 0.55, 0.41, 0.04, 0.2, 0.81, 0.27, 0.56, -0.82),
  inputBias: Float32Array.of(0.76, 0.37, 0.27, 0.15, 0.52, 0.97),
  carriedBias: Float32Array.of(-0.24, -0.59, -0.27, -0.65, 0.51, -0.52),
};
const words = Float32Array.of(0.5, -1, 0.25, 1, 0.75, -0.5, -0.25, 0.5, 1);

test.each([
  [
    'the front',
    false,
    [0.5658367872238159, -0.13690215349197388, 0.4142044186592102, 0.19223850965499878, 0.5238506197929382, 0.1929868906736374],
  ],
  [
    'the back',
    true,
    [0.5975890159606934, -0.11105215549468994, 0.1393330991268158, 0.3404567241668701, 0.23926915228366852, 0.11017350107431412],
  ],
])('what it carries from %s', (_, backwards, carried) => {
  const { state } = runGru(unit, words, 3, 2, backwards);
  carried.forEach((one, at) => expect(state[at]).toBeCloseTo(one, 6));
});
