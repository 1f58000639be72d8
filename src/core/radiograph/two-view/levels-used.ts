import { type Level, levelsOf, placeAt } from "./match-by-level.ts";
import { placeOfViews } from "./places-of-views.ts";
import type { TwoViewOutput } from "./two-view-output.ts";
import type { Views } from "./view.ts";

const steps = 12;

/**
 * Which places of the traces were taken as one, at 13 levels or more from orifice to foramen.
 * Takes films with their points paired. Gives distances along the traces as they were put in, in mm.
 * @source docs/methods/two-view.md C6
 */
export function levelsUsed(films: Views): NonNullable<TwoViewOutput["levels"]> {
  const { views, byIndex } = films;
  const levels = byIndex ? evenLevels(films) : levelsOf(views, steps);
  return levels.map(({ stops, fixed }) => {
    const seen = views.map(({ points }, film) => placeAt(points, stops[film]));
    return {
      alongMm: views.map(({ alongMm }, film) => between(alongMm, stops[film] ?? 0)),
      zMm: placeOfViews(films, seen).place.z,
      fixed,
    };
  });
}

const evenLevels = ({ views }: Views): Level[] =>
  Array.from({ length: steps + 1 }, (_, step) => ({
    stops: views.map(({ points }) => (step / steps) * (points.length - 1)),
    fixed: false,
  }));

function between(values: readonly number[], stop: number): number {
  const low = Math.floor(stop);
  const from = values[low] ?? 0;
  return from + (stop - low) * ((values[low + 1] ?? from) - from);
}
