import { z } from "zod";
import iso from "../../../data/iso-3630-1/source.json" with { type: "json" };
import zinelis from "../../../data/zinelis-2002/source.json" with { type: "json" };
import { intervalSchema, outputParts, sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { type Instrument, instrumentFields } from "./instrument-fields.ts";
import { diameterAt, type InstrumentShape, instrumentShape } from "./instrument-shape.ts";
import { colourOfSize, sizeInSeries } from "./iso-series.ts";
import { placeOfDiameter } from "./place-of-diameter.ts";

const sources = sourcesOf([iso, zinelis]);

const input = z.strictObject({
  ...instrumentFields,
  find: z
    .strictObject({ diameterMm: z.number().gt(0).max(2).describe("A diameter, in mm.") })
    .optional()
    .describe("Where along the instrument this diameter is."),
});

const output = z.strictObject({
  profile: z
    .array(
      z.strictObject({
        atMm: z.number().describe("From the tip, in mm."),
        diameterMm: z.number().describe("Nominal diameter there, in mm."),
        low: z.number().describe("Least diameter by the tolerance, in mm."),
        high: z.number().describe("Largest diameter by the tolerance, in mm."),
      }),
    )
    .describe("Every 0.5 mm from 0 to the working end, and at each given station."),
  colour: z.string().optional().describe("The standard's colour of the size; absent for a custom size."),
  custom: z.boolean().describe("Whether the tip is of no size of the standard's series."),
  toleranceMm: z.number().describe("How far a diameter may be off, in mm."),
  found: z
    .strictObject({ atMm: z.number(), interval: intervalSchema })
    .optional()
    .describe("Where the diameter asked for is, mm from the tip; the interval is what the tolerance allows."),
  ...outputParts,
});

/**
 * Diameters of an instrument along its axis with their tolerance, its colour, and where a diameter is.
 * @throws Refusal `input.impossible` for an instrument that can't be, or a diameter that it has nowhere;
 * `input.notDeterminable` for a diameter that it has at many places.
 * @source ISO 3630-1 (memory); docs/methods/instrument.md
 */
export const instrumentTopic = defineTopic({
  name: "instrument",
  version: 1,
  summary: "An instrument's diameters along its axis with their tolerance, and where a diameter is.",
  input,
  output,
  sources,
  compute: ({ find, ...instrument }) => {
    const shape = instrumentShape(instrument);
    const size = sizeInSeries(shape.tipMm);
    const colour = size === undefined ? undefined : colourOfSize(size);
    return {
      profile: profileOf(shape, instrument),
      ...(colour === undefined ? {} : { colour }),
      custom: size === undefined,
      toleranceMm: shape.toleranceMm,
      ...(find === undefined ? {} : { found: placeOfDiameter(shape, find.diameterMm, "find.diameterMm") }),
      basis: {
        formula: formulaOf(instrument),
        assumptions: assumptionsOf(shape),
        sources: sources.map(({ id }) => id),
      },
      cautions: cautionsOf(shape, instrument, size),
      notComputed: [
        ...(colour === undefined ? [{ name: "colour", why: "a custom size has no colour in the standard" }] : []),
        ...(find === undefined ? [{ name: "found", why: "no diameter was asked for" }] : []),
      ],
    };
  },
});

const stepMm = 0.5;

function profileOf(shape: InstrumentShape, { profile = [] }: Instrument) {
  const steps = Math.floor(shape.workingMm / stepMm + 1e-9);
  const even = Array.from({ length: steps + 1 }, (_, index) => index * stepMm);
  const places = [...new Set([...even, shape.workingMm, ...profile.map(({ atMm }) => atMm)])].sort((a, b) => a - b);
  return places.map((atMm) => {
    const diameterMm = diameterAt(shape, atMm);
    const low = Math.max(0, diameterMm - shape.toleranceMm);
    return { atMm, diameterMm, low, high: diameterMm + shape.toleranceMm };
  });
}

function formulaOf({ profile, maxDiameterMm }: Instrument): string {
  const law = profile === undefined ? "d(x) = d0 + taper x" : "Straight lines between the stations of the profile";
  return maxDiameterMm === undefined ? law : `${law}, at most ${maxDiameterMm} mm`;
}

const assumptionsOf = ({ toleranceMm }: InstrumentShape): string[] => [
  "The diameter at 0 is the one that the taper would have there; a real tip is shaped and thinner.",
  `The tolerance is ${toleranceMm} mm each way, quoted from memory, for every taper and everywhere along the instrument; it is read as an interval of 95 %.`,
];

function cautionsOf(
  shape: InstrumentShape,
  { size, tipMm, profile, workingMm }: Instrument,
  series?: number,
): string[] {
  const last = profile?.at(-1)?.atMm;
  return [
    ...(series === undefined
      ? [
          `${size === undefined ? `A tip of ${tipMm ?? shape.tipMm} mm` : `Size ${size}`} is not in the standard's series: a custom instrument, given the tolerance of its neighbours.`,
        ]
      : []),
    ...(workingMm === undefined && last !== undefined && last < iso.workingMm
      ? [`The profile ends ${last} mm from the tip; what the instrument is beyond is not known.`]
      : []),
  ];
}
