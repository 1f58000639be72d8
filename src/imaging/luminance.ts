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

/** What one grey is made of three components. */
type ToGrey = (first: number, second: number, third: number) => number;

/**
 * The luminance of a whole picture.
 * Takes components (any unsigned range up to 16 bits), how they are laid out, how many pixels there are, and how three
 * components make one grey; red, green and blue where nothing else is said.
 * Gives one sample a pixel, in the range of the components.
 */
export function luminanceOf(
  components: ArrayLike<number>,
  layout: ColourLayout,
  pixels: number,
  toGrey: ToGrey = luminance,
): Uint16Array {
  const { step, apart } = layout;
  const samples = new Uint16Array(pixels);
  for (let pixel = 0, at = 0; pixel < pixels; pixel++, at += step)
    samples[pixel] = toGrey(components[at] ?? 0, components[at + apart] ?? 0, components[at + 2 * apart] ?? 0);
  return samples;
}

/**
 * The luminance of a colour that is written as brightness and two differences of colour (full range).
 * Takes the bits of a sample. Gives a function of brightness, blue and red difference that gives a number of that range.
 * @source DICOM PS3.3 C.7.6.3.1.2, YBR_FULL: the matrix of ITU-R BT.601, here inverted (memory)
 */
export function luminanceOfYbr(bits: number): ToGrey {
  const middle = 2 ** (bits - 1);
  const largest = 2 ** bits - 1;
  const within = (value: number) => Math.max(0, Math.min(largest, Math.round(value)));
  return (brightness, blueDifference, redDifference) => {
    const [blue, red] = [blueDifference - middle, redDifference - middle];
    return luminance(
      within(brightness + 1.402 * red),
      within(brightness - 0.344136 * blue - 0.714136 * red),
      within(brightness + 1.772 * blue),
    );
  };
}
