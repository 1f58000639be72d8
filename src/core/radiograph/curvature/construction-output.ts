import { z } from "zod";
import type { Vector } from "../../geometry/vector.ts";
import type { Construction } from "./construction.ts";

const place = z.array(z.number()).min(2).max(3);
const line = z.tuple([place, place]);

/** How the published measures were built, in the input's axes and unit. */
export const constructionSchema = z.strictObject({
  orifice: place.describe("Start of the largest bend's part of the canal."),
  departure: place.describe("Where the canal leaves its coronal axis."),
  bendEnd: place.describe("Where the bend ends."),
  foramen: place.describe("End of that part."),
  schneider: z.strictObject({ axis: line, line }).describe("The angle at the departure, between axis and line."),
  weine: z
    .strictObject({ axis: line, apical: line, chord: line })
    .optional()
    .describe("The angle where axis and apical line cross; chord: the last length s of the canal."),
  pruett: z
    .strictObject({ tangents: z.tuple([line, line]), crossing: place, centre: place, radius: z.number() })
    .optional()
    .describe("The circle that touches both tangents at departure and bendEnd; radius in the input's unit."),
  access: z.strictObject({ axis: line, line }).describe("The angle at the orifice."),
  height: z
    .strictObject({ line, fromDeparture: line, largest: line })
    .describe("Both heights over the line from orifice to foramen, each from its place on the canal to its foot."),
  tightest: z
    .strictObject({ at: place, centre: place, radius: z.number() })
    .optional()
    .describe("The tightest place and the circle that bends as the canal does there."),
});
/** See {@link constructionSchema}. */
export type ConstructionOutput = z.infer<typeof constructionSchema>;

/** The tightest place of a course and its circle. */
export interface Tightest {
  readonly at: Vector;
  readonly centre: Vector;
  readonly radius: number;
}

/** How places and lengths of a fit are written: in the axes and the unit of the input. */
export interface WrittenPlaces {
  readonly place: (at: Vector) => number[];
  readonly length: (mm: number) => number;
}

/**
 * A construction as the output holds it. `withRadius` is false for a bend that is not worth a radius (C18).
 */
export function constructionOutput(
  made: Construction,
  tightest: Tightest | undefined,
  withRadius: boolean,
  { place: written, length }: WrittenPlaces,
): ConstructionOutput {
  const lineOf = ([from, to]: readonly [Vector, Vector]): [number[], number[]] => [written(from), written(to)];
  const { schneider, weine, pruett, access, height } = made;
  return {
    orifice: written(made.orifice),
    departure: written(made.departure),
    bendEnd: written(made.bendEnd),
    foramen: written(made.foramen),
    schneider: { axis: lineOf(schneider.axis), line: lineOf(schneider.line) },
    ...(weine === undefined
      ? {}
      : { weine: { axis: lineOf(weine.axis), apical: lineOf(weine.apical), chord: lineOf(weine.chord) } }),
    ...(pruett === undefined || !withRadius
      ? {}
      : {
          pruett: {
            tangents: [lineOf(pruett.tangents[0]), lineOf(pruett.tangents[1])],
            crossing: written(pruett.crossing),
            centre: written(pruett.centre),
            radius: length(pruett.radius),
          },
        }),
    access: { axis: lineOf(access.axis), line: lineOf(access.line) },
    height: {
      line: lineOf(height.line),
      fromDeparture: lineOf(height.fromDeparture),
      largest: lineOf(height.largest),
    },
    ...(tightest === undefined || !withRadius
      ? {}
      : {
          tightest: {
            at: written(tightest.at),
            centre: written(tightest.centre),
            radius: length(tightest.radius),
          },
        }),
  };
}
