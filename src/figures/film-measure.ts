/** A place in a film in pixels, [u to the right, v down]; [0, 0] is the middle of the first pixel. */
export type FilmPoint = readonly [number, number];

/** Something drawn on a film. */
export type FilmMeasure = { readonly label?: string | undefined } & (
  | { /** A canal's course, from orifice to foramen. */ readonly kind: "trace"; readonly points: readonly FilmPoint[] }
  | { /** A border, closed. */ readonly kind: "outline"; readonly points: readonly FilmPoint[] }
  | { /** An object whose length is known. */ readonly kind: "known"; readonly from: FilmPoint; readonly to: FilmPoint }
  | { /** A distance. */ readonly kind: "length"; readonly from: FilmPoint; readonly to: FilmPoint }
  | { /** A point. */ readonly kind: "spot"; readonly at: FilmPoint }
  | { /** A fragment of an instrument, top to tip. */ readonly kind: "fragment"; readonly points: readonly FilmPoint[] }
  | { /** The way from a filling's end to the apex. */ readonly kind: "gap"; readonly points: readonly FilmPoint[] }
  | {
      /** A level of a canal: a tick across it. */
      readonly kind: "level";
      readonly at: FilmPoint;
      /** The canal's direction there. */
      readonly along: FilmPoint;
    }
  | {
      /** Crown and root along the axis, parted at the foot of the level. */
      readonly kind: "crownRoot";
      readonly crown: FilmPoint;
      readonly level: FilmPoint;
      readonly foot: FilmPoint;
      readonly apex: FilmPoint;
    }
  | {
      /** A wall, from the outer surface to the canal. */ readonly kind: "wall";
      readonly from: FilmPoint;
      readonly to: FilmPoint;
    }
  | {
      /** How a measure was built: thin lines, and what is read off them. */
      readonly kind: "construction";
      readonly lines: readonly (readonly FilmPoint[])[];
      /** The arc of an angle, a circle, a height. */
      readonly read: readonly (readonly FilmPoint[])[];
      readonly at: FilmPoint;
    }
);

/** What each kind is called where the drawing is told in words. */
export const kindWords: Readonly<Record<FilmMeasure["kind"], string>> = {
  trace: "canal course",
  outline: "outline",
  known: "known length",
  length: "distance",
  spot: "point",
  fragment: "fragment",
  gap: "filling's end to apex",
  level: "level",
  crownRoot: "crown and root",
  wall: "wall",
  construction: "construction",
};

/** The lines of a measure as chains of places, for what has to keep off them. */
export function chainsOf(measure: FilmMeasure): readonly (readonly FilmPoint[])[] {
  switch (measure.kind) {
    case "trace":
    case "fragment":
    case "gap":
      return [measure.points];
    case "outline":
      return [[...measure.points, ...measure.points.slice(0, 1)]];
    case "spot":
    case "level":
      return [[measure.at]];
    case "crownRoot":
      return [
        [measure.crown, measure.apex],
        [measure.level, measure.foot],
      ];
    case "construction":
      return [...measure.lines, ...measure.read];
    default:
      return [[measure.from, measure.to]];
  }
}

/** Where a label belongs: the end of a course (its foramen), the highest place of a border, the middle of anything long. */
export function labelPlace(measure: FilmMeasure): FilmPoint {
  switch (measure.kind) {
    case "trace":
      return measure.points.at(-1) ?? [0, 0];
    case "outline":
      return [...measure.points].sort((a, b) => a[1] - b[1])[0] ?? [0, 0];
    case "fragment":
    case "gap":
      return measure.points[Math.floor(measure.points.length / 2)] ?? [0, 0];
    case "spot":
    case "level":
    case "construction":
      return measure.at;
    case "crownRoot":
      return measure.level;
    default:
      return [(measure.from[0] + measure.to[0]) / 2, (measure.from[1] + measure.to[1]) / 2];
  }
}
