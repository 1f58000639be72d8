/**
 * The luminance of a colour, from its components as they are stored (no gamma is undone).
 * Takes red, green and blue of any one range. Gives a number of the same range; three equal components give themselves.
 * @source Recommendation ITU-R BT.709-6, 2015, item 3.2: weights 0.2126, 0.7152, 0.0722 (memory)
 */
export const luminance = (red: number, green: number, blue: number): number =>
  Math.round(0.2126 * red + 0.7152 * green + 0.0722 * blue);

/** Where the components of a colour picture stand: sample `i` of component `c` is at `i * step + c * apart`. */
export interface ColourLayout {
  readonly step: number;
  readonly apart: number;
}

/**
 * The luminance of a whole picture.
 * Takes components (any unsigned range up to 16 bits), how they are laid out, and how many pixels there are.
 * Gives one sample a pixel, in the range of the components.
 */
export function luminanceOf(components: ArrayLike<number>, layout: ColourLayout, pixels: number): Uint16Array {
  const { step, apart } = layout;
  const samples = new Uint16Array(pixels);
  for (let pixel = 0, at = 0; pixel < pixels; pixel++, at += step)
    samples[pixel] = luminance(components[at] ?? 0, components[at + apart] ?? 0, components[at + 2 * apart] ?? 0);
  return samples;
}
