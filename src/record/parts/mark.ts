import { z } from "zod";
import { definePart } from "../part.ts";
import { canalName, filmPoint, line, otherPart } from "../values.ts";

const shared = {
  film: otherPart,
  sigmaPx: z.number().gt(0).max(20).optional().describe("Click error, px; default the person's own."),
};

const ofRoot = {
  canal: canalName.optional().describe("The canal that it belongs to."),
  root: canalName.optional().describe("The root that it belongs to, where no canal names it."),
};

/** The published measures whose construction can be drawn over a course. */
export const constructionNames = ["schneider", "weine", "pruett", "access", "height", "tightest"] as const;

const trace = z.strictObject({
  ...shared,
  shape: z.literal("trace"),
  ...ofRoot,
  kind: z
    .enum(["canal", "filledCanal", "instrument", "other"])
    .optional()
    .describe("What was followed; the canal unless this says otherwise."),
  drawn: z
    .array(z.enum(constructionNames))
    .max(constructionNames.length)
    .optional()
    .describe("Measures whose construction is drawn over the film."),
  from: z
    .enum(["orifice", "referencePoint"])
    .optional()
    .describe("Where the course begins; a length film's at the reference point unless this says otherwise."),
  polarity: z.enum(["dark", "bright"]),
  anchors: z.array(filmPoint).min(2).max(60).describe("What the person marked, towards the apex."),
  points: z.array(filmPoint).min(4).max(4_000).describe("The course, towards the apex."),
});
const knownLength = z.strictObject({
  ...shared,
  shape: z.literal("knownLength"),
  object: z.enum(["instrument", "gauge", "scaleBar", "implant", "sphere", "other"]),
  lengthMm: z.number().gt(0).max(60),
  from: filmPoint,
  to: filmPoint,
});
const distance = z.strictObject({
  ...shared,
  shape: z.literal("distance"),
  what: line,
  from: filmPoint,
  to: filmPoint,
});
const outline = z.strictObject({
  ...shared,
  shape: z.literal("outline"),
  what: line,
  points: z.array(filmPoint).min(3).max(2_000),
});
const spot = z.strictObject({
  ...shared,
  shape: z.literal("spot"),
  what: line,
  at: filmPoint,
  is: z
    .enum(["apex", "fillingEnd", "level"])
    .optional()
    .describe("What is measured from it; absent for any other place."),
  ...ofRoot,
  lies: z
    .enum(["short", "beyond"])
    .optional()
    .describe("Of a filling's end: its side of the apex where no course shows it."),
});
const fragment = z.strictObject({
  ...shared,
  shape: z.literal("fragment"),
  ...ofRoot,
  anchors: z.array(filmPoint).min(2).max(60).describe("What the person marked, from its top to its tip."),
  points: z.array(filmPoint).min(2).max(4_000).describe("The line along it, from its top to its tip."),
});
const crownRoot = z.strictObject({
  ...shared,
  shape: z.literal("crownRoot"),
  root: canalName.optional().describe("The root whose apex it is."),
  crown: filmPoint.describe("Cusp or incisal edge."),
  level: filmPoint,
  apex: filmPoint,
  levelIs: z.enum(["boneCrest", "cementoEnamelJunction"]).describe("Where crown and root are parted."),
});
const wall = z.strictObject({
  ...shared,
  shape: z.literal("wall"),
  ...ofRoot,
  from: filmPoint.describe("On the root's outer surface."),
  to: filmPoint.describe("On the edge of the canal."),
  side: z.enum(["mesial", "distal"]).optional(),
});

/** Something a person marked on a film, in pixels of that film. */
export const markPart = definePart({
  kind: "mark",
  version: 1,
  single: false,
  migrations: [],
  body: z.discriminatedUnion("shape", [trace, knownLength, distance, outline, spot, fragment, crownRoot, wall]),
});
