import iso from "../../../data/iso-3630-1/source.json" with { type: "json" };

/** The sizes of the standard's series, smallest first: hundredths of a mm at the tip. */
export const standardSizes: readonly number[] = iso.sizes;

/** The taper of the standard's hand files, mm per mm. */
export const standardTaper = iso.standardTaper;

/** Length of the working part of the standard, mm. */
export const standardWorkingMm = iso.workingMm;

/**
 * The size of the standard's series that a tip diameter belongs to, or undefined where the series has none of it.
 * Takes mm.
 * @source ISO 3630-1, 1992, 2008, 2019 (memory)
 */
export function sizeInSeries(tipMm: number): number | undefined {
  return iso.sizes.find((size) => Math.abs(size * iso.tipMmPerSize - tipMm) < 1e-9);
}

/** The tip diameter of a size, in mm: a hundredth of it. */
export const tipOfSize = (size: number): number => size * iso.tipMmPerSize;

/**
 * How far a diameter may be off by the standard, in mm: one value up to size 60, a larger one above.
 * Takes the tip diameter in mm; a custom size is judged by where it lies.
 * @source ISO 3630-1, 1992, 2008, 2019 (memory)
 */
export function toleranceOfTip(tipMm: number): number {
  const { upToSize, mm, aboveMm } = iso.tolerance;
  return tipMm <= tipOfSize(upToSize) + 1e-9 ? mm : aboveMm;
}

/**
 * The colour of a size of the series: six colours in turn from 15 on, three colours of their own below.
 * @source ISO 3630-1 (memory); the six in turn as taught (seen)
 */
export function colourOfSize(size: number): string | undefined {
  const { small, cycle, cycleFromSize } = iso.colours;
  const named = Object.entries(small).find(([of]) => Number(of) === size);
  if (named !== undefined) return named[1];
  const place = iso.sizes.indexOf(size) - iso.sizes.indexOf(cycleFromSize);
  return place < 0 ? undefined : cycle[place % cycle.length];
}
