import { extrusionLadder } from "../figures/extrusion-ladder.ts";
import { type InLimit, limitsByAveraging } from "../figures/limits-by-averaging.ts";
import type { Figure } from "../figures/svg-tree.ts";
import type { ThemeName } from "../figures/theme.ts";
import { type VapourCurve, type VapourPanel, vapourOverVisit } from "../figures/vapour-over-visit.ts";
import type { SolventTold } from "../ledger/solvent-told.ts";
import { sourceName } from "./source-name.ts";

type Limit = SolventTold["limits"][number];
type Zone = SolventTold["far"];
type ZoneName = Limit["zone"];
type Averaging = Limit["averagingMin"];

/** How a drawing of a solvent is shown, and what is drawn beside it as supposed. */
interface Shown {
  readonly theme: ThemeName;
  readonly widthPx: number;
  readonly supposed?: SolventTold | undefined;
}

/** Concentrations over the visit, each mean by its own limits; with what they would be if something were otherwise. */
export const vapourFigure = (
  told: SolventTold,
  doses: readonly { readonly atMin: number; readonly volumeMl: number }[],
  { theme, widthPx, supposed }: Shown,
): Figure =>
  vapourOverVisit({
    panels: ([0, 15, 60, 480] as const).map((averagingMin) => panelOf(told, averagingMin, supposed)),
    ...{ doses, theme, widthPx },
  });

function panelOf(told: SolventTold, averagingMin: Averaging, supposed: SolventTold | undefined): VapourPanel {
  return {
    averagingMin,
    curves: curvesOf(told, averagingMin),
    supposed: supposed && curvesOf(supposed, averagingMin),
    limits: told.limits
      .filter((one) => one.averagingMin === averagingMin && one.zone === "far")
      .map((limit) => ({ label: `${nameOf(limit)}: ${short(limit.ppm)} ppm`, ppm: limit.ppm })),
  };
}

function curvesOf({ near, far }: SolventTold, averagingMin: Averaging): readonly VapourCurve[] {
  const zones = [...(near === undefined ? [] : [["near", near] as const]), ["far", far] as const];
  return zones.map(([zone, air]) => ({ zone, points: pointsOf(air, averagingMin) }));
}

function pointsOf(air: Zone, averagingMin: Averaging): VapourCurve["points"] {
  return averagingMin === 0
    ? momentsOf(air)
    : (air.means.find((mean) => mean.averagingMin === averagingMin)?.series ?? []);
}

/** Moments are told in mg/m3; in ppm they are by the peak, which is told in both. */
function momentsOf({ peak, series }: Zone): VapourCurve["points"] {
  const inPpm = peak.mgM3 > 0 ? peak.ppm / peak.mgM3 : 0;
  return series.map(({ tMin, mgM3, lowMgM3, highMgM3 }) => ({
    ...{ tMin, ppm: mgM3 * inPpm },
    lowPpm: lowMgM3 === undefined ? undefined : lowMgM3 * inPpm,
    highPpm: highMgM3 === undefined ? undefined : highMgM3 * inPpm,
  }));
}

/** Each limit in the zones asked for, as parts of it, the strictest first. */
export const limitsFigure = (
  { limits }: SolventTold,
  zones: readonly ZoneName[],
  { theme, widthPx, supposed }: Shown,
): Figure =>
  limitsByAveraging({
    rows: limits
      .filter(({ zone }) => zones.includes(zone))
      .map((limit) => ({
        ...{ label: nameOf(limit), says: heldInWords(limit), ...inLimit(limit) },
        supposed: sameLimit(supposed, limit),
      })),
    ...{ theme, widthPx },
  });

const inLimit = ({ ratio, ratioWithin, stands }: Limit): InLimit => ({ ratio, within: ratioWithin, stands });

function sameLimit(supposed: SolventTold | undefined, limit: Limit): InLimit | undefined {
  const same = supposed?.limits.find(
    ({ authority, source, averagingMin, zone, ppm }) =>
      [authority, source, averagingMin, zone, ppm].join() ===
      [limit.authority, limit.source, limit.averagingMin, limit.zone, limit.ppm].join(),
  );
  return same && inLimit(same);
}

/** Whose a limit is and of which year; with a star where it was recalled. */
const nameOf = ({ authority, year, mark }: Limit): string =>
  `${authority}${year === undefined ? "" : ` ${year}`}${mark === "memory" ? "*" : ""}`;

const heldWords = { 0: "highest", 15: "mean over 15 min", 60: "mean over 60 min", 480: "mean over 480 min" } as const;

/** What is held against a limit: `mean over 60 min near the mouth, 0.51 of 2 ppm`. */
const heldInWords = ({ averagingMin, zone, value, ppm }: Limit): string =>
  `${heldWords[averagingMin]} ${zone === "near" ? "near the mouth" : "in the room"}, ${short(value.ppm)} of ${short(ppm)} ppm`;

const short = (value: number): string => String(Number(value.toPrecision(2)));

/** Lists of limits whose folders carry no year of a paper. */
const lists: Readonly<Record<string, string>> = {
  "haz-map": "Collection of Haz-Map",
  "irsst-quebec": "IRSST, Quebec",
  "iarc-monographs": "IARC Monographs",
  "trgs-900": "TRGS 900",
  "osha-1910-1000": "OSHA, 29 CFR 1910.1000",
};

/** The name of a source of the solvent's sums. */
export const solventSourceName = (id: string): string => lists[id] ?? sourceName(id);

/** Kinds of doses that something is held against, in words. */
export const doseKindWords = {
  acuteLethal: "acute lethal dose",
  acuteEffect: "acute effect",
  dailyReference: "daily reference dose",
} as const;
const markWords = { seen: "read", memory: "from memory", own: "as entered" } as const;

/** What is taken to have passed the foramen, against each dose, the lowest first. */
export const extrusionFigure = (
  { doseMgPerKg, margins, tradition }: NonNullable<SolventTold["extrusion"]>,
  { theme, widthPx }: Omit<Shown, "supposed">,
): Figure =>
  extrusionLadder({
    passedMgPerKg: doseMgPerKg,
    rungs: margins.map(({ kind, mgPerKg, source, mark }) => ({
      label: `${doseKindWords[kind]}, ${short(mgPerKg)} mg/kg`,
      says: `${solventSourceName(source)}, ${markWords[mark]}`,
      mgPerKg,
    })),
    tradition: tradition.impliedMgPerKg,
    ...{ theme, widthPx },
  });
