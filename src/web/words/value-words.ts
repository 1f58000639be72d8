import { sourceName, withSourceNames } from "../../pages/source-name.ts";
import { lowered } from "./capital.ts";
import { wordsOfName } from "./words-of-name.ts";

/** What the inputs and outputs of computations are called where they stand alone. */
const names: Readonly<Record<string, string>> = {
  accessAngleDeg: "Access angle",
  "after.hash": "The later film",
  anchors: "What was marked",
  apex: "Apex",
  apexDistanceMm: "From the apex",
  apexToEdgeMm: "From the apex to the edge",
  areaRatio: "Area, after over before",
  atMm: "Tightest, below the orifice",
  "before.hash": "The earlier film",
  canalOnFilmMm: "Length on the film",
  asideMm: "Beside the course",
  at: "Place",
  bend: "Largest bend",
  canal: "Edge of the canal",
  canals: "Canals",
  chordMm: "Straight distance",
  clickSigmaPx: "Click error",
  column: "Scale across",
  course: "Course of the canal",
  crown: "Cusp or incisal edge",
  crownMm: "Crown",
  crownToRoot: "Crown to root",
  curved: "Whether it is curved",
  detectorSpacingMm: "Detector spacing",
  distanceMm: "Distance",
  end: "Filling's end",
  fragment: "Fragment",
  from: "One end",
  hardParts: "Parts to go by",
  hash: "Its pixels",
  heightDistanceMm: "Foot of the curvature height",
  heightMaxMm: "Greatest distance from the chord",
  heightMm: "Curvature height",
  horizontalAngleDeg: "Tube angle",
  impliedMagnification: "Magnification that the known length implies",
  "intervals.lengthMm": "Interval of the length",
  landmarks: "Landmarks",
  lengthMm: "Length",
  level: "Level",
  levelIs: "What the level is",
  lies: "On which side it lies",
  "lesions.after": "Lesion on the later film",
  "lesions.before": "Lesion on the earlier film",
  locatorDifferenceMm: "Locator less film",
  locatorMm: "Locator",
  magnification: "Magnification",
  maxCurvaturePerMm: "Largest curvature",
  minRadiusMm: "Tightest radius",
  mmPerPx: "Scale",
  outer: "Outer surface",
  openApex: "Whether the apex is open",
  pixelSpacingMm: "Pixel spacing",
  points: "Course",
  pruettDeg: "Largest bend",
  pruettRadiusMm: "Radius of that bend",
  radiographicMm: "To the radiographic apex",
  recommendedMm: "Working length by film",
  relativeSigma: "Error of the scale",
  roots: "Roots",
  rootMm: "Root",
  row: "Scale down",
  scaleRelativeSigma: "Error of the scale",
  scaledByKnown: "Whether a known length gave the scale",
  schneiderDeg: "Angle after Schneider",
  sequence: "Canals from orifice to foramen",
  sigmaMm: "Error of a point",
  sigmaMmPerPx: "Error of the scale in mm a pixel",
  sigmaPx: "Click error",
  shortMm: "Short of the apex",
  side: "Side",
  stopShortMm: "Stop short of the apex",
  thicknessMm: "Thickness",
  tipDepthMm: "Depth of its tip",
  tipToApexMm: "Its tip to the apex",
  to: "The other end",
  toForamenMm: "To the foramen",
  topDepthMm: "Depth of its top",
  totalTurnDeg: "All turning",
  traced: "Whether it is a traced course",
  uRunsTo: "What lies to the right",
  used: "Where the scale comes from",
  verticalAngleDeg: "Vertical angle",
  weineDeg: "Angle after Weine",
};

/** A value's name in words: known ones by hand, others as the code writes them, without their unit. */
export function valueInWords(name: string): string {
  const look = /^evidence\[(\d+)\]$/.exec(name)?.[1];
  if (look !== undefined) return `Look ${Number(look) + 1}`;
  const inList = name.replace(/^\w+\[\d+\]\./, "");
  return names[name] ?? names[inList] ?? wordsOfName(inList.replace(/(?<=[a-z])(MmPerPx|Mm2|Mm|Deg|Px|Min|Ml)$/, ""));
}

/** A source's id as one would say it: `schneider-1971` as Schneider 1971. */
export const sourceInWords = sourceName;

/** A sentence of a computation with the names of the code in it said in words. */
export function sentenceInWords(sentence: string): string {
  return withSourceNames(sentence)
    .replaceAll(/\bviews\[(\d+)\]/g, (_, index: string) => `film ${Number(index) + 1}`)
    .replaceAll(/\bknown\[(\d+)\]/g, (_, index: string) => `known length ${Number(index) + 1}`)
    .replaceAll(/\bevidence\[(\d+)\]/g, (_, index: string) => `look ${Number(index) + 1}`)
    .replaceAll(/\bcbct\b/g, "CBCT")
    .replaceAll(/\b[a-z]+(?:[A-Z][a-z]+)+\d?\b/g, (name) => lowered(valueInWords(name)))
    .replace(/^./, (letter) => letter.toUpperCase());
}

/** A line of a refusal as a sentence, without the path that it begins with. */
export const refusalInWords = (line: string): string => sentenceInWords(line.replace(/^[\w.[\]]+: /, ""));
