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
  breakFromOrificeMm: "The break, from the orifice",
  breakFromReferenceMm: "The break, from the reference point",
  brokenEndDiameterMm: "Width at the broken end",
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
  courseEnds: "Where the course ends",
  courseStarts: "Where the course begins",
  crown: "Cusp or incisal edge",
  crownMm: "Crown",
  crownToRoot: "Crown to root",
  curvatureDeg: "Bend of the canal",
  curved: "Whether it is curved",
  detectorSpacingMm: "Detector spacing",
  distanceMm: "Distance",
  end: "Filling's end",
  engagedFraction: "Share of the turns at that depth",
  fragment: "Fragment",
  from: "One end",
  fromOrificeMm: "From the orifice",
  fromReferenceMm: "From the reference point",
  fromTipMm: "From its tip",
  hardParts: "Parts to go by",
  hash: "Its pixels",
  headDepthMm: "Depth of its head",
  headDiameterMm: "Width of its head",
  headSeen: "Whether its head is seen",
  heightDistanceMm: "Foot of the curvature height",
  heightMaxMm: "Greatest distance from the chord",
  heightMm: "Curvature height",
  horizontalAngleDeg: "Tube angle",
  innerSide: "Inner side of the bend",
  wallsConfirmed: "Walls thinner than the canal confirmed",
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
  maxDiameterMm: "Where it stops widening",
  minRadiusMm: "Tightest radius",
  minutesSpent: "Minutes spent",
  mmPerPx: "Scale",
  offCentreMm: "Off the centre",
  orificeShiftMm: "Shift of the orifice",
  outer: "Outer surface",
  openApex: "Whether the apex is open",
  peakStrain: "Largest strain",
  pixelSpacingMm: "Pixel spacing",
  points: "Course",
  pruettDeg: "Largest bend",
  pruettRadiusMm: "Radius of that bend",
  radiographicMm: "To the radiographic apex",
  recommendedMm: "Working length by film",
  relativeSigma: "Error of the scale",
  remainingLengthMm: "What is left of the instrument",
  roots: "Roots",
  rootMm: "Root",
  row: "Scale down",
  rpm: "Turns a minute",
  mmHg: "mmHg",
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
  stoppedAtTorqueLimit: "Whether it stopped at the torque limit",
  thicknessMm: "Thickness",
  thinnestAlong: "Thinnest walls on the way",
  tipBound: "Whether its tip was bound",
  tipDepthMm: "Depth of its tip",
  tipDiameterMm: "Width at its tip",
  tipToApexMm: "Its tip to the apex",
  to: "The other end",
  toForamenMm: "To the foramen",
  topDepthMm: "Depth of its top",
  torqueLimitNmm: "Torque limit",
  totalTurnDeg: "All turning",
  traced: "Whether it is a traced course",
  uRunsTo: "What lies to the right",
  used: "Where the scale comes from",
  verticalAngleDeg: "Vertical angle",
  wallLeftMm: "Wall left",
  weineDeg: "Angle after Weine",
  workingMm: "Working part",
  worstSection: "Section worn most",
};

/** A value's name in words: known ones by hand, others as the code writes them, without their unit. */
export function valueInWords(name: string): string {
  const look = /^evidence\[(\d+)\]$/.exec(name)?.[1];
  if (look !== undefined) return `Look ${Number(look) + 1}`;
  const [, row = "", inRow = ""] = /^(uses|candidates)\[\d+\]\.?(.*)$/.exec(name) ?? [];
  if (row !== "") return valueOfRow(name, row, inRow);
  const inList = name.replace(/^\w+\[\d+\]\./, "").replace(/^(instrument|fragment|course)\./, "");
  return names[name] ?? names[inList] ?? wordsOfName(inList.replace(/(?<=[a-z])(MmPerPx|Mm2|Mm|Deg|Px|Min|Ml)$/, ""));
}

const rowWords: Readonly<Record<string, string>> = { uses: "Use", candidates: "Instrument" };

/** One of several uses or instruments by its number: `Use 2, depth of its tip`. */
function valueOfRow(name: string, row: string, inRow: string): string {
  const number = Number(/\[(\d+)\]/.exec(name)?.[1]) + 1;
  return `${rowWords[row]} ${number}${inRow === "" ? "" : `, ${lowered(valueInWords(inRow))}`}`;
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
