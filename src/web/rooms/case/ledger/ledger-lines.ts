import type { Interval } from "../../../../core/basis.ts";
import { percentText } from "../../../../figures/chance-text.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import {
  type Ends,
  intervalInWords,
  numberInWords,
  quantityInWords,
  withUnit,
} from "../../../parts/figures-in-words.ts";
import { valueAt } from "../../../record/body-path.ts";
import { bendSideWords, liesSideWords } from "../../../words/side-words.ts";
import { valueInWords } from "../../../words/value-words.ts";
import { wordsOfName } from "../../../words/words-of-name.ts";
import type { LedgerLine } from "./ledger-line.ts";
import { listLines, listNames, nameInWays } from "./list-lines.ts";

/** How one value of a topic's output is read. */
interface Shown {
  readonly at: string;
  readonly name: string;
  readonly unit: string;
  /** Where its interval stands in the output, if not under `intervals`. */
  readonly interval?: string;
  /** Decimals where no interval says how many it deserves. */
  readonly digits?: number;
  /** The sides that the sign stands for: above 0, below 0. */
  readonly ends?: readonly [string, string];
  /** A chance or a share, told in percent. */
  readonly share?: true;
  /** What its answers are called, where they are words of the code. */
  readonly words?: Readonly<Record<string, string>>;
}

const fillingLiesWords = { short: "short of the apex", beyond: "beyond the apex", notDecided: "not decided" } as const;

const boundWords = {
  ...{ asMeasured: "within its interval", lower: "no less", upper: "no more", none: "not bounded" },
} as const;

/** A chance with its interval: `posterior.mean` and `posterior.interval`. */
const shareAt = (place: string, name: string): Shown => ({
  ...{ at: `${place}.mean`, name, unit: "", interval: `${place}.interval`, share: true },
});

/** What stands of a topic's output in the ledger: the first value speaks for the entry. */
const shown: Readonly<Record<string, readonly Shown[]>> = {
  tooth: [{ at: "name", name: "Tooth", unit: "" }],
  canals: [
    { at: "code.display", name: "Roots and canals", unit: "" },
    { at: "rootCount", name: "Roots", unit: "" },
    { at: "canalCount", name: "Canals at the orifice", unit: "" },
    { at: "foramenCount", name: "Foramina", unit: "" },
    { at: "extraRoot", name: "Extra root", unit: "" },
  ],
  diagnosis: [
    { at: "pulpal.term", name: "Pulp, from the findings", unit: "" },
    { at: "pulpal.status", name: "That is", unit: "" },
    { at: "apical.term", name: "Apex, from the findings", unit: "" },
    { at: "apical.status", name: "That is", unit: "" },
    { at: "apicalAlso", name: "Beside it", unit: "" },
    { at: "source", name: "The complaint comes from", unit: "" },
    { at: "codes.icd10.pulpal", name: "ICD-10, pulp", unit: "" },
    { at: "codes.icd10.apical", name: "ICD-10, apex", unit: "" },
    { at: "codes.icd11.pulpal", name: "ICD-11, pulp", unit: "" },
    { at: "codes.icd11.apical", name: "ICD-11, apex", unit: "" },
  ],
  testStrength: [shareAt("posterior", "Non-vital pulp, after the tests"), shareAt("prior", "Before the tests")],
  missedCanal: [shareAt("posterior", "Chance that it is there"), shareAt("prior", "Before any look")],
  calibrate: [{ at: "mmPerPx.column", name: "Scale", unit: "mm/px", interval: "interval" }],
  workingLength: [
    { at: "recommendedMm", name: "Working length by film", unit: "mm", interval: "recommendedInterval" },
    { at: "radiographicMm", name: "To the radiographic apex", unit: "mm", interval: "interval" },
    { at: "locatorDifferenceMm", name: "Locator less film", unit: "mm", digits: 1 },
    { at: "stopShortMm", name: "Stop short of the apex", unit: "mm" },
  ],
  curvature: [
    { at: "pruettDeg", name: "Largest bend", unit: "°" },
    { at: "pruettRadiusMm", name: "Radius there", unit: "mm" },
    { at: "atMm", name: "Tightest, below the orifice", unit: "mm" },
    { at: "lengthMm", name: "Length of the course", unit: "mm" },
    { at: "schneiderDeg", name: "Angle after Schneider", unit: "°" },
    { at: "weineDeg", name: "Angle after Weine", unit: "°" },
    { at: "accessAngleDeg", name: "Access angle", unit: "°" },
    { at: "totalTurnDeg", name: "All turning", unit: "°" },
  ],
  fillingEnd: [
    { at: "shortMm", name: "Filling, short of the apex", unit: "mm" },
    { at: "distanceMm", name: "Filling's end to the apex", unit: "mm" },
    { at: "lies", name: "It ends", unit: "", words: fillingLiesWords },
  ],
  fragmentOnFilm: [
    { at: "lengthMm", name: "Fragment on the film", unit: "mm" },
    { at: "topDepthMm", name: "Depth of its top", unit: "mm" },
    { at: "tipToApexMm", name: "Its tip to the apex", unit: "mm" },
    { at: "thirds.top.third", name: "Its top, third of the canal", unit: "" },
    { at: "thirds.tip.third", name: "Its tip, third of the canal", unit: "" },
    { at: "bend.lies", name: "To the largest bend", unit: "" },
  ],
  levelOnCanal: [
    { at: "fromStartMm", name: "Level, from the start of the course", unit: "mm" },
    { at: "toForamenMm", name: "To the foramen", unit: "mm" },
  ],
  wallOnFilm: [{ at: "thicknessMm", name: "Wall on the film", unit: "mm" }],
  crownRoot: [
    { at: "crownToRoot", name: "Crown to root", unit: "" },
    { at: "kind", name: "Which ratio", unit: "" },
    { at: "crownMm", name: "Crown", unit: "mm" },
    { at: "rootMm", name: "Root", unit: "mm" },
  ],
  lesion: [
    { at: "largestDiameterMm", name: "Lesion, widest", unit: "mm" },
    { at: "acrossDiameterMm", name: "Across it", unit: "mm" },
    { at: "areaMm2", name: "Area", unit: "mm²" },
    { at: "equivalentDiameterMm", name: "Circle of the same area", unit: "mm" },
    { at: "apexDistanceMm", name: "From the apex", unit: "mm" },
  ],
  compareFilms: [
    { at: "areaRatio", name: "Lesion's area, after over before", unit: "" },
    { at: "residualMm", name: "Pieces lie off by", unit: "mm", digits: 2 },
    { at: "residualNearLesionPx", name: "Near the lesion", unit: "px", digits: 1 },
    { at: "stretch", name: "Largest stretch over smallest", unit: "", digits: 3 },
    { at: "overlap", name: "Share of the first film covered", unit: "", digits: 2 },
    { at: "statement", name: "Whether they compare", unit: "" },
  ],
  tubeShift: [
    {
      at: "recommended.horizontalAngleDeg",
      name: "Next film's tube",
      unit: "°",
      digits: 0,
      ends: ["from mesial", "from distal"],
    },
  ],
  bend: [
    { at: "peakStrain", name: "Largest strain", unit: "", share: true },
    { at: "fromTipMm", name: "There, from its tip", unit: "mm", digits: 1 },
    { at: "fromOrificeMm", name: "There, from the orifice", unit: "mm", digits: 1 },
    { at: "fromReferenceMm", name: "There, from the reference point", unit: "mm", digits: 1 },
    { at: "radiusMm", name: "Radius of the canal there", unit: "mm", digits: 1 },
    { at: "turnDeg", name: "All turning of the canal", unit: "°", digits: 0 },
    { at: "bounds.2.bound", name: "The true strain is", unit: "", words: boundWords },
  ],
  twoView: [
    { at: "hiddenDeg", name: "Hidden by the straighter film", unit: "°" },
    { at: "side", name: "The bend turns", unit: "", words: bendSideWords },
    { at: "liesSide", name: "The canal lies", unit: "", words: liesSideWords },
    { at: "liesBuccallyMm", name: "Beside the shared mark", unit: "mm", ends: ["to buccal", "to lingual"] },
    { at: "curvature.pruettDeg", name: "Largest bend in space", unit: "°", interval: "intervals.pruettDeg" },
    { at: "apparent.0", name: "Seen on film 1", unit: "°", digits: 0 },
    { at: "apparent.1", name: "Seen on film 2", unit: "°", digits: 0 },
    { at: "apparent.2", name: "Seen on film 3", unit: "°", digits: 0 },
    { at: "plane.angleToFilmDeg", name: "Its plane, off the film", unit: "°", interval: "intervals.angleToFilmDeg" },
    { at: "lengthMm", name: "Length in space", unit: "mm" },
  ],
};

/** What a value of an output is called, by its topic and place: `Largest bend`, `Largest bend, low end`, `Sequence, root 2`. */
export function valueName(topic: string | undefined, at: string): string {
  const [, place = at, end] = /^(.*)\.(low|high)$/.exec(at) ?? [];
  const known = shown[topic ?? ""]?.find((one) => [one.at, one.interval, `intervals.${one.at}`].includes(place));
  const name = known?.name ?? (topic === "plan" ? nameInWays(place) : undefined) ?? plainName(place);
  return end === undefined ? name : `${name}, ${end} end`;
}

/** The unit of a value that stands in an entry; empty for one that has none or is the end of an interval. */
export const valueUnit = (topic: string | undefined, at: string): string =>
  shown[topic ?? ""]?.find((one) => one.at === at)?.unit ?? "";

function plainName(place: string): string {
  const [, list, number] = /^(\w+?)s?\[(\d+)\]/.exec(place) ?? [];
  const name = valueInWords(place.split(".").at(-1) ?? place);
  return list === undefined ? name : `${name}, ${list} ${Number(number) + 1}`;
}

/** What an entry is called: by its first value, whether it stands or not. */
export const entryName = (topic: string): string => listNames[topic] ?? shown[topic]?.[0]?.name ?? wordsOfName(topic);

/** Whether a value is the one that an entry is called by; where it could not be computed no other stands under its name. */
export function speaksFor(topic: string, at: string): boolean {
  const first = listLines[topic] === undefined ? shown[topic]?.[0] : undefined;
  return first === undefined || first.at === at;
}

/** The values of an entry in the order in which they are read; empty where the sum was refused. */
export function ledgerLines(entry: Pick<LedgerEntry, "topic" | "output">): readonly LedgerLine[] {
  const asList = listLines[entry.topic];
  if (asList !== undefined) return asList(entry.output);
  const list = shown[entry.topic] ?? guessed(entry.output);
  return list.flatMap((one) => {
    const value = valueAt(entry.output, one.at);
    if (typeof value === "string" && value !== "")
      return [{ at: one.at, name: one.name, value: one.words?.[value] ?? value }];
    if (typeof value !== "number") return [];
    const interval = valueAt(entry.output, one.interval ?? `intervals.${one.at}`);
    return [lineOf(one, value, isInterval(interval) ? interval : undefined)];
  });
}

function lineOf(one: Shown, value: number, interval: Ends | undefined): LedgerLine {
  if (one.share) return shareLine(one, value, interval);
  const { at, name, unit, digits, ends: sides } = one;
  const isBelow = sides !== undefined && value < 0;
  const [size, ends] = isBelow ? [-value, interval && turned(interval)] : [value, interval];
  const bare =
    digits === undefined || ends !== undefined
      ? quantityInWords(size, unit, ends)
      : withUnit(numberInWords(size, digits), unit);
  const side = Number.parseFloat(bare) === 0 ? undefined : sides?.[isBelow ? 1 : 0];
  const line = { at, name, value: side === undefined ? bare : `${bare} ${side}` };
  return ends === undefined ? line : { ...line, interval: intervalInWords(ends) };
}

function shareLine({ at, name }: Shown, value: number, interval: Ends | undefined): LedgerLine {
  const line = { at, name, value: withUnit(percentText(value), "%") };
  if (interval === undefined) return line;
  return { ...line, interval: `${percentText(interval.low)}–${percentText(interval.high)}` };
}

/** The same interval counted to the other side. */
const turned = ({ low, high }: Ends): Ends => ({ low: 0 - high, high: 0 - low });

/** The lengths that single films show, beside the one in space: each film's own entry gives it. */
export function lengthsOnFilms(
  entry: Pick<LedgerEntry, "topic" | "inputPaths">,
  ledger: readonly LedgerEntry[],
): readonly LedgerLine[] {
  if (entry.topic !== "twoView") return [];
  const courses = [...new Set(entry.inputPaths.map(({ record }) => record.split("/")[0]))];
  const found = courses.flatMap((id) => ledger.find(({ subject }) => subject === `curvature of ${id}`) ?? []);
  return found.flatMap((one, index) =>
    ledgerLines(one)
      .filter(({ at }) => at === "lengthMm")
      .map((line) => ({ ...line, at: one.id, name: `Length on film ${index + 1}` })),
  );
}

const isInterval = (value: unknown): value is Interval =>
  typeof value === "object" && value !== null && "low" in value && "high" in value;

const unitOfName: readonly (readonly [RegExp, string])[] = [
  [/MmPerPx$/, "mm/px"],
  [/PerMm$/, "1/mm"],
  [/Mm$/, "mm"],
  [/Deg$/, "°"],
  [/Px$/, "px"],
  [/Min$/, "min"],
  [/Ml$/, "ml"],
];

/** A topic that this list does not know yet: its numbers by their own names. */
function guessed(output: unknown): readonly Shown[] {
  if (typeof output !== "object" || output === null) return [];
  return Object.entries(output).flatMap(([at, value]) => {
    if (typeof value !== "number") return [];
    const [ending, unit] = unitOfName.find(([end]) => end.test(at)) ?? [/$^/, ""];
    return [{ at, name: wordsOfName(at.replace(ending, "")), unit }];
  });
}
