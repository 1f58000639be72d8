import { truePoints } from "../anatomy/canal.ts";
import type { Projection } from "../exposure/projection.ts";
import { distanceMm, type ToothPoint } from "../tooth-point.ts";
import type { PlacedInstrument } from "../treatment/instrument.ts";
import { type DemoFilm, treatedTooth } from "./demo-film.ts";

/** A place on a film: column and row in pixels, (0,0) the centre of the first pixel. */
export type OnFilm = readonly [column: number, row: number];

/** An instrument of known length on a film. */
export interface KnownLength {
  readonly lengthMm: number;
  readonly from: OnFilm;
  readonly to: OnFilm;
}

/** What is known of a film because it was made. */
export interface FilmTruth {
  /** Each canal from orifice to foramen: where its course falls on the film. */
  readonly canals: Readonly<Record<string, readonly OnFilm[]>>;
  /** The same courses in the tooth's axes: x to distal, y to buccal, z to the apex, in mm. */
  readonly canalsMm: Readonly<Record<string, readonly (readonly [number, number, number])[]>>;
  /** Length of each canal along its course. */
  readonly lengthsMm: Readonly<Record<string, number>>;
  /** The straightest instrument whose length is known: what the ruler read, and where stop and tip fall. */
  readonly knownLength?: KnownLength;
  /** Every such instrument, by the canal it stands in. */
  readonly knownLengths?: Readonly<Record<string, KnownLength>>;
  readonly lesionRadiusMm: number;
}

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

/** The truth of a film, for a projection (which says how many pixels there are). */
export function truthOf(film: DemoFilm, projection: Projection): FilmTruth {
  const onFilm = (place: ToothPoint): OnFilm => {
    const { column, row } = projection.toFilm(place);
    return [rounded(column, 2), rounded(row, 2)];
  };
  const { canals } = treatedTooth(film.jaw);
  const courses = canals.map((canal) => [canal.name, truePoints(canal, 0.5)] as const);
  const instruments = Object.entries(film.instruments ?? {}).map(
    ([name, { lengthMm, stop, tip }]) => [name, { lengthMm, from: onFilm(stop), to: onFilm(tip) }] as const,
  );
  const straightness = ({ stop, tip, lengthMm }: PlacedInstrument): number => distanceMm(stop, tip) / lengthMm;
  const straightest = Object.entries(film.instruments ?? {}).reduce<string | undefined>((best, [name, placed]) => {
    const other = best === undefined ? undefined : film.instruments?.[best];
    return other === undefined || straightness(placed) > straightness(other) ? name : best;
  }, undefined);
  const known = instruments.find(([name]) => name === straightest)?.[1];
  return {
    canals: Object.fromEntries(courses.map(([name, points]) => [name, points.map(onFilm)])),
    canalsMm: Object.fromEntries(
      courses.map(([name, points]) => [
        name,
        points.map(({ x, y, z }) => [rounded(x, 4), rounded(y, 4), rounded(z, 4)] as const),
      ]),
    ),
    lengthsMm: Object.fromEntries(canals.map((canal) => [canal.name, rounded(canal.course.lengthMm, 4)])),
    ...(known === undefined ? {} : { knownLength: known, knownLengths: Object.fromEntries(instruments) }),
    lesionRadiusMm: film.lesionRadiusMm,
  };
}
