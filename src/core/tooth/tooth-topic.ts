import { z } from "zod";
import iso3950 from "../../../data/iso-3950/source.json" with { type: "json" };
import { outputParts, sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { notations, toothOf } from "./tooth-of.ts";

const sources = sourcesOf([iso3950]);

const input = z.strictObject({
  notation: z.enum(notations).describe("The notation that the value is written in."),
  value: z.string().min(1).describe('The tooth as written: "46", "30" or "T", "lower right 6".'),
});

const output = z.strictObject({
  twoDigit: z.string().describe("ISO 3950: 11-48, 51-85."),
  universal: z.string().describe("1-32 or A-T."),
  quadrant: z.string().describe('Quadrant and position: "lower right 6".'),
  dentition: z.enum(["permanent", "primary"]),
  arch: z.enum(["upper", "lower"]),
  side: z.enum(["right", "left"]).describe("The patient's side."),
  type: z.enum(["incisor", "canine", "premolar", "molar"]),
  name: z.string().describe("The tooth in words."),
  ...outputParts,
});

/**
 * One tooth in every notation.
 * @throws Refusal `tooth.unknown` with the other teeth that the text could have meant.
 * @source International Organization for Standardization, ISO 3950, 2016 (memory); docs/methods/tooth
 */
export const toothTopic = defineTopic({
  name: "tooth",
  version: 1,
  summary: "One tooth in every notation: two-digit, universal, quadrant and position.",
  input,
  output,
  sources,
  compute: ({ notation, value }) => ({
    ...toothOf(notation, value),
    basis: {
      formula: "Look-up of the tooth in the 52 of ISO 3950",
      assumptions: [
        "The universal notation counts 1-32 and A-T from the hindmost upper right tooth (common practice).",
      ],
      sources: [iso3950.id],
    },
    cautions: [],
    notComputed: [],
  }),
});
