import pess from "../../../data/pess-2021/source.json" with { type: "json" };
import { type Basis, type Interval, sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { mm, type PlanePoint } from "../units.ts";
import { type ApexAtOutline, apexAtOutline } from "./lesion/apex-at-outline.ts";
import { closedOutline } from "./lesion/closed-outline.ts";
import { lesionCautions } from "./lesion/lesion-cautions.ts";
import { type LesionInput, type LesionOutput, lesionInput, lesionOutput } from "./lesion/lesion-input.ts";
import { lesionIntervals } from "./lesion/lesion-intervals.ts";
import { areaOf, centreOf } from "./lesion/outline-area.ts";
import { diametersOf } from "./lesion/outline-diameters.ts";
import { sizeClassOf } from "./lesion/size-class.ts";

const sources = sourcesOf([pess]);

/**
 * The size of an outlined lesion: area, diameters, distance to the apex, each with an interval.
 * @throws Refusal `trace.tooFewPoints` under 3 corners; `input.impossible` where the outline meets itself or encloses
 * nothing.
 * @source plane geometry; docs/methods/lesion.md
 */
export const lesionTopic = defineTopic({
  name: "lesion",
  version: 1,
  summary: "The size of an outlined lesion: area, diameters, distance to the apex, with intervals.",
  input: lesionInput,
  output: lesionOutput,
  sources,
  compute: lesion,
});

function lesion(input: LesionInput): LesionOutput {
  const corners = closedOutline(input.points);
  const areaMm2 = Math.abs(areaOf(corners));
  const diameters = diametersOf(corners);
  const apex = input.apex === undefined ? undefined : apexAtOutline(placeOf(input.apex), corners);
  const intervals = intervalsOf(input, { corners, areaMm2, diameters, apex });
  const centre = centreOf(corners);
  return {
    areaMm2,
    largestDiameterMm: diameters.largest,
    acrossDiameterMm: diameters.across,
    equivalentDiameterMm: 2 * Math.sqrt(areaMm2 / Math.PI),
    centre: [centre.x, centre.y],
    ...apexValues(apex),
    intervals,
    sizeClass: sizeClassOf(diameters.largest, intervals.largestDiameterMm),
    basis: basisOf(input),
    cautions: lesionCautions(corners, input),
    notComputed: apex === undefined ? apexNames.map((name) => ({ name, why: "no apex is given" })) : [],
  };
}

const apexNames = ["apexDistanceMm", "apexToEdgeMm", "apexInside"] as const;

const placeOf = ([x, y]: readonly [number, number]): PlanePoint => ({ x: mm(x), y: mm(y) });

const apexValues = (apex: ApexAtOutline | undefined) =>
  apex === undefined
    ? {}
    : { apexDistanceMm: apex.inside ? 0 : apex.toEdge, apexToEdgeMm: apex.toEdge, apexInside: apex.inside };

function intervalsOf(
  { sigmaMm, scaleRelativeSigma }: LesionInput,
  measured: Omit<Parameters<typeof lesionIntervals>[0], "sigmaMm" | "scaleSigma">,
): Record<string, Interval> {
  if (sigmaMm === undefined) return {};
  return lesionIntervals({ ...measured, sigmaMm, scaleSigma: scaleRelativeSigma ?? 0 });
}

function basisOf({ sigmaMm, scaleRelativeSigma }: LesionInput): Basis {
  return {
    formula: "Area of a polygon; largest distance between its corners and its width at right angles to that",
    assumptions: [
      "The lesion ends where the outline was drawn, straight from corner to corner.",
      sigmaMm === undefined
        ? "No click error is given, so there are no intervals."
        : `Each corner, and the apex, errs by itself by ${sigmaMm} mm in each direction (standard deviation).`,
      scaleRelativeSigma === undefined
        ? "The scale is taken as exact."
        : `The scale errs by a share of ${scaleRelativeSigma} (standard deviation), the same for the whole film.`,
      "The class is that of the largest diameter; S0 would need the width of the ligament.",
    ],
    sources: sources.map(({ id }) => id),
  };
}
