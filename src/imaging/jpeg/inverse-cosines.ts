/** Half the cosine of each frequency at each place, the lowest frequency divided by the root of two (equation A.3.3). */
const cosines = Float64Array.from({ length: 64 }, (_, index) => {
  const [frequency, place] = [index >> 3, index & 7];
  return (frequency === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * place + 1) * frequency * Math.PI) / 16);
});
const between = new Float64Array(64);

/**
 * The values of a block of eight by eight from its cosine coefficients, in place.
 * Takes 64 coefficients, row by row, the vertical frequency rising with the row. Gives the same array with the values.
 * @source Recommendation ITU-T T.81, 1992, A.3.3, the inverse transform, along rows and then along columns (memory)
 */
export function inverseCosines(block: Float64Array): Float64Array {
  for (let row = 0; row < 64; row += 8) alongLine(block, between, { from: row, step: 1 });
  for (let column = 0; column < 8; column++) alongLine(between, block, { from: column, step: 8 });
  return block;
}

function alongLine(source: Float64Array, target: Float64Array, { from, step }: { from: number; step: number }): void {
  for (let place = 0; place < 8; place++) {
    let sum = 0;
    for (let frequency = 0; frequency < 8; frequency++)
      sum += (source[from + frequency * step] ?? 0) * (cosines[frequency * 8 + place] ?? 0);
    target[from + place * step] = sum;
  }
}
