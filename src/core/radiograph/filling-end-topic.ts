import kuttler from "../../../data/kuttler-1955/source.json" with { type: "json" };
import pess from "../../../data/pess-2020/source.json" with { type: "json" };
import schaeffer from "../../../data/schaeffer-2005/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { fillingClasses } from "./drawn-measures/filling-classes.ts";
import {
  type FillingEndInput,
  type FillingEndOutput,
  fillingEndInput,
  fillingEndOutput,
} from "./drawn-measures/filling-end-input.ts";
import { type FillingReading, fillingReading } from "./drawn-measures/filling-reading.ts";
import { errorAssumptions, lengthIntervals, oneProjection } from "./drawn-measures/film-errors.ts";

const sources = sourcesOf([pess, schaeffer, kuttler]);

/**
 * How far short of the radiographic apex a filling ends, or how far beyond, with an interval and the published classes.
 * @throws Refusal `trace.tooFewPoints` for a course of fewer than 2 different places.
 * @source plane geometry; classes: data/pess-2020, data/schaeffer-2005 (seen); docs/methods/filling-end.md
 */
export const fillingEndTopic = defineTopic({
  name: "fillingEnd",
  version: 1,
  summary: "How far short of the radiographic apex a filling ends, or how far beyond, with an interval.",
  input: fillingEndInput,
  output: fillingEndOutput,
  sources,
  compute: fillingEnd,
});

function fillingEnd(input: FillingEndInput): FillingEndOutput {
  const reading = fillingReading(input);
  const { distanceMm, shortMm, clickShare } = reading;
  const intervals = lengthIntervals(
    {
      distanceMm: { mm: distanceMm, clickShare },
      ...(shortMm === undefined ? {} : { shortMm: { mm: shortMm, clickShare } }),
    },
    input,
  );
  const { distanceMm: ofDistance, ...rest } = intervals;
  return {
    distanceMm,
    ...(shortMm === undefined ? {} : { shortMm, lies: liesOf(shortMm, intervals.shortMm) }),
    readAlong: reading.along,
    way: reading.way,
    ...(reading.asideMm === undefined ? {} : { asideMm: reading.asideMm }),
    intervals:
      ofDistance === undefined ? {} : { distanceMm: { ...ofDistance, low: Math.max(0, ofDistance.low) }, ...rest },
    classes: shortMm === undefined ? [] : fillingClasses(shortMm, intervals.shortMm),
    basis: {
      formula: "The way from the filling's end to the apex, along the canal's course where it is traced",
      assumptions: assumptionsOf(reading, input),
      sources: sources.map(({ id }) => id),
    },
    cautions: cautionsOf(reading, intervals.shortMm),
    notComputed: shortMm === undefined ? ["shortMm", "lies"].map((name) => ({ name, why: noSide })) : [],
  };
}

const noSide =
  "nothing tells whether the filling ends short of the apex or beyond it: trace the canal, or say which side it is";

function liesOf(shortMm: number, interval: { low: number; high: number } | undefined) {
  if (interval !== undefined && interval.low <= 0 && interval.high >= 0) return "notDecided" as const;
  return shortMm < 0 ? ("beyond" as const) : ("short" as const);
}

function assumptionsOf({ along }: FillingReading, input: FillingEndInput): string[] {
  return [
    along === "course"
      ? "The way follows the traced course; beyond its ends it goes on straight."
      : "The way is straight from the filling's end to the apex.",
    ...errorAssumptions(input),
    ...(along === "course" ? ["The course as a whole may lie beside the canal by a click's error."] : []),
    "Fillings of groups in the sources were judged on films, against the radiographic apex.",
  ];
}

/** An end or an apex farther beside the course than this may belong to another canal, mm. */
const farAsideMm = 1;

function cautionsOf(
  { asideMm, apexAsideMm }: FillingReading,
  interval: { low: number; high: number } | undefined,
): string[] {
  const { young, old } = kuttler.rootTipToForamenMm;
  return [
    `The radiographic apex is not the foramen: the foramen lies ${young} mm (young) to ${old} mm (old) from the root tip on average, to any side.`,
    oneProjection,
    ...(interval !== undefined && interval.low <= 0 && interval.high >= 0
      ? ["The interval holds 0: this film does not decide whether the filling ends short of the apex or beyond it."]
      : []),
    ...((asideMm ?? 0) > farAsideMm
      ? [`The filling's end lies ${asideMm?.toFixed(1)} mm beside the course: is it the end of this canal's filling?`]
      : []),
    ...((apexAsideMm ?? 0) > farAsideMm
      ? [
          `The apex lies ${apexAsideMm?.toFixed(1)} mm beside the course: the canal ends at the side of the root, or it is another root's apex.`,
        ]
      : []),
  ];
}
