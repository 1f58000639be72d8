import type { Basis } from "../../basis.ts";
import type { CompareFilmsInput } from "./compare-films-input.ts";
import type { ComparedFilms } from "./compared-films.ts";

/** Landmarks that lie off farther than this many clicks' errors were not clicked on the same places. */
const farOff = 6;

/** What to keep in mind about a comparison. */
export function cautionsOf({ sigmaPx }: CompareFilmsInput, films: ComparedFilms): string[] {
  const off = films.landmarkResidualPx;
  return [
    ...(off > Math.max(3, farOff * sigmaPx)
      ? [`The landmarks lie ${off.toFixed(1)} px off: look whether each is the same place on both films.`]
      : []),
    ...(films.lesions.before === undefined && films.lesions.after === undefined
      ? ["No lesion is outlined: whatever changed was compared as if it had not."]
      : []),
  ];
}

/** How a comparison came about. */
export function basisOf({ hardParts, mmPerPx }: CompareFilmsInput, sources: string[]): Basis {
  return {
    formula:
      "Projective map from landmarks, refined by the largest correlation; greys matched by their cumulative histograms",
    assumptions: [
      "One plane of the tooth is brought together; what lies nearer to the tube or farther from it is left off, and the residual says how far.",
      hardParts.length === 0
        ? "The whole of the first film but the lesions is taken as unchanged."
        : "The outlined parts of the first film, less the lesions, are taken as unchanged.",
      mmPerPx === undefined
        ? "The scale is not known: 5 px stand for the 0.2 mm that pieces may lie off."
        : "Pieces may lie off by 0.2 mm, the width of the ligament space (common practice).",
    ],
    sources,
  };
}
