import bahia from "../../../data/bahia-buono-2005/source.json" with { type: "json" };
import burklein from "../../../data/burklein-2021/source.json" with { type: "json" };
import iso from "../../../data/iso-3630-1/source.json" with { type: "json" };
import { type Basis, sourcesOf } from "../basis.ts";
import { faultAt } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { type BendInput, type BendOutput, bendInput, bendOutput } from "./bend-input.ts";
import { type BendIntervals, bendIntervals } from "./bend-intervals.ts";
import { peakStrain, placesAlong, type Seated, type Strained, strainAt } from "./bending-strain.ts";
import { type CanalBending, canalBending, curvatureAt } from "./canal-bending.ts";
import { instrumentShape } from "./instrument-shape.ts";
import { seatedInstrument } from "./seated-instrument.ts";
import { type Seeing, strainBounds } from "./strain-bounds.ts";

const sources = sourcesOf([bahia, burklein, iso]);

/**
 * How much a canal bends an instrument that is seated in it, where most, and what of that is bounded.
 * @throws Refusal `input.impossible` for an instrument that can't be, a depth beyond canal or instrument, an arc beyond its
 * canal, one film of points in space, a radius of the outer side that is too small; `trace.tooFewPoints` under 4 points.
 * @source Bahia and Buono 2005 (memory); docs/methods/bend.md
 */
export const bendTopic = defineTopic({
  name: "bend",
  version: 1,
  summary: "How much a canal bends an instrument that is seated in it, and where most.",
  input: bendInput,
  output: bendOutput,
  sources,
  compute: bend,
});

/** Said where a depth from the reference point is beyond such a course: it is then often the orifice that it begins at. */
const beginsWords = " from the reference point; if its course begins at the orifice, say so";

/** A strain above this is said: the canal would have to bend the instrument beyond it. */
const strainToSay = 0.1;

function bend(input: BendInput): BendOutput {
  const shape = instrumentShape(input.instrument, "instrument");
  const bending = canalBending(input.course, "course");
  const { tipDepthMm, convention = "neutral" } = input;
  const begins = startOf(input) === "orifice" ? "" : beginsWords;
  const seated = seatedInstrument({ shape, bending, tipDepthMm, convention }, "tipDepthMm", begins);
  const seeing = seeingOf(input, bending);
  checkOuter(seated);
  const peak = peakStrain(seated);
  const profile = placesAlong(seated).map((fromTipMm) => ({ fromTipMm, strain: strainAt(seated, fromTipMm) }));
  const intervals = bendIntervals(seated, bending);
  return {
    peakStrain: peak.strain,
    ...placeOf(peak, seated, input),
    turnDeg: bending.turnDeg,
    profile,
    overTenPercent: peak.strain > strainToSay,
    intervals,
    bounds: strainBounds(bending, seeing),
    basis: basisOf(bending, seated),
    cautions: cautionsOf(profile, peak, { seated, from: fromWords[startOf(input)] }),
    notComputed: notComputedOf(peak, intervals, { bending, start: startOf(input) }),
  };
}

/** With the radius on the outer side, d / (2R - d) has no meaning from d = 2R on. */
function checkOuter(seated: Seated): void {
  if (seated.convention !== "outer" || peakStrain({ ...seated, convention: "neutral" }).strain < 1) return;
  throw faultAt("convention", "outer: the radius of the outer side is no more than half the instrument's thickness");
}

function seeingOf({ view = {}, clearance = "notKnown" }: BendInput, { known, turnDeg }: CanalBending): Seeing {
  const { films = known === "plane" ? "one" : "space", longAxis = "notKnown", turnAtMostDeg } = view;
  if (films === "one" && known === "space") throw faultAt("view.films", "is one film, but the points are of space");
  if (films === "one" && turnAtMostDeg !== undefined && turnAtMostDeg < turnDeg - 1 && longAxis === "parallel")
    throw faultAt(
      "view.turnAtMostDeg",
      `${turnAtMostDeg} is less than the course turns on the film, ${turnDeg.toFixed(1)}`,
    );
  return { films, longAxis, turnAtMostDeg, clearance };
}

type Start = NonNullable<BendInput["courseStarts"]>;

const startOf = ({ courseStarts = "orifice" }: BendInput): Start => courseStarts;
const fromWords: Readonly<Record<Start, string>> = { orifice: "orifice", referencePoint: "reference point" };

function placeOf({ strain, fromTipMm }: Strained, { bending, tipDepthMm }: Seated, input: BendInput) {
  if (strain === 0) return {};
  const fromStartMm = tipDepthMm - fromTipMm;
  const inCanal = startOf(input) === "orifice" ? { fromOrificeMm: fromStartMm } : { fromReferenceMm: fromStartMm };
  return { fromTipMm, ...inCanal, radiusMm: 1 / curvatureAt(bending.knots, fromStartMm) };
}

const formulas = { neutral: "d k / 2", outer: "d k / (2 - d k)", inner: "d k / (2 + d k)" } as const;

function basisOf({ by }: CanalBending, { convention, shape, tipDepthMm }: Seated): Basis {
  return {
    formula: `Strain at the surface: ${formulas[convention]}, with the diameter d and the curvature k of the course`,
    assumptions: [
      `The curvature is taken from ${by}.`,
      `The course's radius is that of the instrument's ${convention === "neutral" ? "axis" : `${convention} side`}; papers differ.`,
      "The instrument follows the course and is bent without being pulled or twisted.",
      ...(tipDepthMm > shape.workingMm
        ? [`Beyond ${shape.workingMm} mm from its tip the shaft is as thick as there.`]
        : []),
    ],
    sources: sources.map(({ id }) => id),
  };
}

function cautionsOf(
  profile: readonly Strained[],
  peak: Strained,
  { seated: { tipDepthMm }, from: start }: { seated: Seated; from: string },
): string[] {
  const over = profile.filter(({ strain }) => strain > strainToSay).map(({ fromTipMm }) => fromTipMm);
  const [from = peak.fromTipMm] = over;
  const to = over.at(-1) ?? peak.fromTipMm;
  return [
    ...(peak.strain > strainToSay
      ? [
          `The instrument can't follow this course without being bent beyond a strain of 10 %: ${from.toFixed(1)} to ${to.toFixed(1)} mm from its tip, ${(tipDepthMm - to).toFixed(1)} to ${(tipDepthMm - from).toFixed(1)} mm from the ${start}.`,
        ]
      : []),
    "A strain says how hard the canal bends the instrument, not how many turns it lasts.",
  ];
}

const otherStart = "the course begins at the reference point, and where the orifice lies on it is not known";

function notComputedOf(
  peak: Strained,
  intervals: BendIntervals,
  { bending: { known }, start }: { bending: CanalBending; start: Start },
) {
  const straight = "the seated part of the canal is straight";
  const noInterval = "no family of courses fits the points, so that none can be drawn that they allow as well";
  return [
    ...(peak.strain === 0 ? ["fromTipMm", "fromOrificeMm", "radiusMm"].map((name) => ({ name, why: straight })) : []),
    ...(peak.strain > 0 && start === "referencePoint" ? [{ name: "fromOrificeMm", why: otherStart }] : []),
    ...(intervals.peakStrain === undefined ? [{ name: "intervals.peakStrain", why: noInterval }] : []),
    ...(known === "arc"
      ? [{ name: "intervals.fromTipMm", why: "an arc is given without an error of its own" }]
      : intervals.fromTipMm === undefined
        ? [{ name: "intervals.fromTipMm", why: peak.strain === 0 ? straight : noPlace }]
        : []),
  ];
}

const noPlace = "some courses that the points allow are straight, or no family fits";
