import caputo from "../../../data/caputo-standlee-1976/source.json" with { type: "json" };
import lim from "../../../data/lim-stock-1987/source.json" with { type: "json" };
import { type Interval, sourcesOf } from "../basis.ts";
import { faultAt } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { errorAssumptions, lengthIntervals } from "./drawn-measures/film-errors.ts";
import {
  type WallOnFilmInput,
  type WallOnFilmOutput,
  wallOnFilmInput,
  wallOnFilmOutput,
} from "./drawn-measures/wall-on-film-input.ts";

const sources = sourcesOf([lim, caputo]);

/**
 * How thick the wall of a root is on a film, with an interval, beside published limits.
 * @throws Refusal `input.impossible` where both places are one.
 * @source plane geometry; Lim and Stock 1987, Caputo and Standlee 1976 (memory); docs/methods/wall-on-film.md
 */
export const wallOnFilmTopic = defineTopic({
  name: "wallOnFilm",
  version: 1,
  summary: "How thick the wall of a root is on a film, with an interval, beside published limits.",
  input: wallOnFilmInput,
  output: wallOnFilmOutput,
  sources,
  compute: wallOnFilm,
});

/** Two clicks, each in the direction of the line between them. */
const clickShare = Math.SQRT2;

function wallOnFilm(input: WallOnFilmInput): WallOnFilmOutput {
  const thicknessMm = Math.hypot(input.canal[0] - input.outer[0], input.canal[1] - input.outer[1]);
  if (thicknessMm === 0) throw faultAt("canal", "is the same place as outer; a wall has two sides");
  const { thicknessMm: interval } = lengthIntervals({ thicknessMm: { mm: thicknessMm, clickShare } }, input);
  const above = interval && { ...interval, low: Math.max(0, interval.low) };
  return {
    thicknessMm,
    intervals: above === undefined ? {} : { thicknessMm: above },
    limits: [lim, caputo].map(({ id, limitMm }) => ({
      source: id,
      limitMm,
      mark: "memory" as const,
      stands: standing(thicknessMm, above, limitMm),
    })),
    basis: {
      formula: "Distance between the root's outer surface and the edge of the canal",
      assumptions: [
        "Both places lie on one line across the root.",
        ...errorAssumptions(input),
        "The published limits are quoted from memory.",
      ],
      sources: sources.map(({ id }) => id),
    },
    cautions: cautionsOf(thicknessMm, input),
    notComputed: [],
  };
}

function standing(thicknessMm: number, interval: Interval | undefined, limitMm: number) {
  if (interval !== undefined && interval.low <= limitMm && interval.high >= limitMm) return "notDecided" as const;
  return thicknessMm < limitMm ? ("below" as const) : ("above" as const);
}

/** A wall of fewer standard deviations of a click than this is hardly told from none. */
const hardlyTold = 3;

function cautionsOf(thicknessMm: number, { side, sigmaMm }: WallOnFilmInput): string[] {
  const seen = side === undefined ? "the wall of one side" : `the ${side} wall`;
  return [
    `One film shows ${seen}, as its thickest and thinnest parts lie behind each other: it may be thinner in another place, and the buccal and lingual walls are not seen.`,
    ...(sigmaMm !== undefined && thicknessMm < hardlyTold * sigmaMm
      ? ["The wall is no thicker than the clicks err: it reads too thick rather than too thin."]
      : []),
  ];
}
