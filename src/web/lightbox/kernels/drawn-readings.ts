import { z } from "zod";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { capital } from "../../words/capital.ts";
import { sourceInWords } from "../../words/value-words.ts";
import type { MarkBody } from "./mark-shape.ts";

/** One value that is read of a drawn mark. */
export interface DrawnValue {
  readonly name: string;
  readonly says: string;
  readonly unit: string;
}

/** What is read of a drawn mark: of which computation, the value that stands for it first. */
export interface DrawnReading {
  readonly topic: string;
  readonly values: readonly DrawnValue[];
}

const mm = (name: string, says: string): DrawnValue => ({ name, says, unit: "mm" });

const ofFragment: DrawnReading = {
  topic: "fragmentOnFilm",
  values: [
    mm("lengthMm", "long on this film"),
    mm("topDepthMm", "Depth of its top"),
    mm("tipDepthMm", "Depth of its tip"),
    mm("tipToApexMm", "Its tip to the apex"),
  ],
};
const ofWall: DrawnReading = { topic: "wallOnFilm", values: [mm("thicknessMm", "thick on this film")] };
const ofAxis: DrawnReading = {
  topic: "crownRoot",
  values: [{ name: "crownToRoot", says: "crown over root", unit: "" }, mm("crownMm", "Crown"), mm("rootMm", "Root")],
};
const ofFilling: DrawnReading = {
  topic: "fillingEnd",
  values: [mm("shortMm", "short of the apex"), mm("distanceMm", "Between both")],
};
const ofLevel: DrawnReading = {
  topic: "levelOnCanal",
  values: [mm("fromStartMm", "from where the course begins"), mm("toForamenMm", "To the foramen")],
};

/** What is read of a mark; undefined for one that is read along its course or not at all. */
export function readingOf(body: MarkBody): DrawnReading | undefined {
  if (body.shape === "fragment") return ofFragment;
  if (body.shape === "wall") return ofWall;
  if (body.shape === "crownRoot") return ofAxis;
  if (body.shape !== "spot") return undefined;
  return body.is === "fillingEnd" ? ofFilling : body.is === "level" ? ofLevel : undefined;
}

/** The value that stands for a mark in a list: of a course its length, of an outline that is a lesion its diameter. */
export function listedValue(
  body: MarkBody,
): { readonly topic: string; readonly name: string; readonly unit: string } | undefined {
  if (body.shape === "trace") return { topic: "curvature", name: "lengthMm", unit: "mm" };
  if (body.shape === "outline") return { topic: "lesion", name: "largestDiameterMm", unit: "mm" };
  const reading = readingOf(body);
  const [first] = reading?.values ?? [];
  return reading && first && { topic: reading.topic, name: first.name, unit: first.unit };
}

const third = z.looseObject({ third: z.string(), within: z.array(z.string()) });
const told = z.looseObject({
  thirds: z.looseObject({ top: third, tip: third }).optional(),
  bend: z.looseObject({ angleDeg: z.number(), lies: z.string(), within: z.array(z.string()) }).optional(),
  classes: z.array(z.looseObject({ source: z.string(), class: z.string(), within: z.array(z.string()) })).default([]),
  limits: z
    .array(z.looseObject({ source: z.string(), limitMm: z.number(), mark: z.string(), stands: z.string() }))
    .default([]),
  kind: z.enum(["clinical", "anatomical"]).optional(),
});

/** What an entry tells in words beside its numbers, one line each. */
export function toldInWords(entry: LedgerEntry | undefined): string[] {
  const found = told.safeParse(entry?.output).data;
  if (found === undefined) return [];
  const { thirds, bend, classes, limits, kind } = found;
  return [
    ...(kind === undefined ? [] : [`The ${kind} ratio`]),
    ...(thirds === undefined
      ? []
      : [`Top in the ${either(thirds.top.within)} third of the canal, tip in the ${either(thirds.tip.within)}`]),
    ...(bend === undefined
      ? []
      : [`${capital(either(bend.within))} the largest bend, of ${bend.angleDeg.toFixed(0)}°`]),
    ...classes.map(
      (one) =>
        `${capital(either(one.within.length > 0 ? one.within : [one.class]))}, after ${sourceInWords(one.source)}`,
    ),
    ...limits.map(
      ({ limitMm, source, mark, stands }) =>
        `${stands === "notDecided" ? "Below or above, not decided," : capital(stands)} ${limitMm} mm (${sourceInWords(source)}${mark === "memory" ? ", from memory" : ""})`,
    ),
  ];
}

const either = (words: readonly string[]): string => words.join(" or ");
