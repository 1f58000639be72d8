import { z } from "zod";
import { definePart } from "../part.ts";
import { canalName, filmPoint, line, otherPart } from "../values.ts";

const shared = {
  film: otherPart,
  sigmaPx: z.number().gt(0).max(20).optional().describe("Click error, px; default the person's own."),
};

const trace = z.strictObject({
  ...shared,
  shape: z.literal("trace"),
  canal: canalName.optional().describe("The canal that the course belongs to."),
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
const spot = z.strictObject({ ...shared, shape: z.literal("spot"), what: line, at: filmPoint });

/** Something a person marked on a film, in pixels of that film. */
export const markPart = definePart({
  kind: "mark",
  version: 1,
  single: false,
  migrations: [],
  body: z.discriminatedUnion("shape", [trace, knownLength, distance, outline, spot]),
});
