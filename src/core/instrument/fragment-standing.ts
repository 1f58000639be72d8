import { normalShareBelow } from "../statistics/normal-share.ts";
import type { BrokenPlace } from "./broken-place.ts";
import type { FractureOutput } from "./fracture-input.ts";
import { lengthSeries } from "./other-places.ts";

/**
 * How long a piece is, and how it stands among published lengths.
 * Takes where it broke. Gives the share of each series that is shorter, were the series normal, and the mean of them.
 * @source marsicovetere-1996, wu-2011 (seen); docs/methods/fracture.md C12
 */
export function fragmentStanding({
  value,
  sigma,
  measures,
}: BrokenPlace): NonNullable<FractureOutput["fragmentLength"]> {
  const series = lengthSeries.map((one) => ({
    ...one,
    percentile: normalShareBelow((value - one.meanMm) / one.sdMm),
  }));
  return {
    mm: value,
    sigmaMm: sigma,
    percentile: series.reduce((sum, { percentile }) => sum + percentile, 0) / series.length,
    source: `${[...new Set(lengthSeries.map(({ source }) => source))].join(", ")}; about 3 mm is usual: common practice`,
    measures: measures.map((one) => ({ name: one.name, mm: one.value, sigmaMm: one.sigma })),
    series,
  };
}
