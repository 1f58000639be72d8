import estrela from "../../../../data/estrela-2008/source.json" with { type: "json" };
import gunday from "../../../../data/gunday-2005/source.json" with { type: "json" };
import pruett from "../../../../data/pruett-1997/source.json" with { type: "json" };
import schneider from "../../../../data/schneider-1971/source.json" with { type: "json" };
import weine from "../../../../data/weine-1982/source.json" with { type: "json" };
import { type Basis, sourcesOf } from "../../basis.ts";
import type { CurvatureInput } from "./curvature-input.ts";

/** What the published measures rest on. */
export const curvatureSources = sourcesOf([schneider, weine, pruett, gunday, estrela]);

/** Weine's apical line where no length is asked for, mm. */
export const usualApicalLineMm = 2;

/** How the numbers of a course came about. */
export function curvatureBasis(input: CurvatureInput): Basis {
  return {
    formula:
      "Courses of straight parts, arcs and ramps by least squares with a penalised choice; published constructions",
    assumptions: [
      `The points are in ${input.unit ?? "mm"}, in order from orifice to foramen, and equally noisy in every direction.`,
      noiseWords(input),
      "The published measures are the largest bend's; its part of the canal ends where another bend begins.",
      ...(input.unit === "px" ? pixelWords(input) : scaleWords(input)),
      "The published classes and constructions are quoted from memory.",
    ],
    sources: curvatureSources.map(({ id }) => id),
  };
}

function noiseWords({ unit, sigmaMm, sigmaPx }: CurvatureInput): string {
  const stated = unit === "px" ? sigmaPx && `${sigmaPx} px` : sigmaMm !== undefined && `${sigmaMm} mm`;
  return stated === undefined || stated === false || stated === 0
    ? "The noise of a point is estimated from its distance to the course."
    : `The standard deviation of a point is ${stated}, as stated, or more where the points scatter more.`;
}

const scaleWords = ({ weineLengthMm }: CurvatureInput): string[] => [
  `Weine's apical line is the chord of the last ${weineLengthMm ?? usualApicalLineMm} mm.`,
  "Estrela's classes are read with the radius of Pruett's circle; the method itself uses two lines of 6 mm.",
];

const pixelWords = ({ pixelAspect }: CurvatureInput): string[] => [
  pixelAspect === undefined ? "A pixel is as high as it is wide." : `A pixel is ${pixelAspect} times as high as wide.`,
];
