import clark from "../../../data/clark-1910/source.json" with { type: "json" };
import molars from "../../../data/molar-separation/source.json" with { type: "json" };
import premolars from "../../../data/premolar-separation/source.json" with { type: "json" };
import schneider from "../../../data/schneider-1971/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { adviseShift } from "./tube-shift/advise-shift.ts";
import { checkFilms } from "./tube-shift/check-films.ts";
import { neighbourOverlap } from "./tube-shift/neighbour-overlap.ts";
import { reachOfAngles } from "./tube-shift/reach-of-angles.ts";
import { type TubeShiftInput, tubeShiftInput } from "./tube-shift/tube-shift-input.ts";
import { type TubeShiftOutput, tubeShiftOutput } from "./tube-shift/tube-shift-output.ts";

const sources = sourcesOf([molars, premolars, schneider, clark]);

/**
 * What a further film under each horizontal angle would tell of a canal beyond the films at hand, and the least shift that
 * settles it.
 * @throws Refusal `input.impossible` for no film or traces that do not run the same way; `input.notDeterminable` for a film
 * of unknown angle; `trace.tooFewPoints`.
 * @source error propagation through the fit of twoView; docs/methods/tube-shift.md
 */
export const tubeShiftTopic = defineTopic({
  name: "tubeShift",
  version: 1,
  summary: "Which tube angle of a further film would settle what the films at hand hide of a canal.",
  input: tubeShiftInput,
  output: tubeShiftOutput,
  sources,
  compute: tubeShift,
});

function tubeShift(input: TubeShiftInput): TubeShiftOutput {
  checkFilms(input);
  const { now, candidates } = reachOfAngles(input);
  const recommended = now?.settles === true ? undefined : adviseShift(candidates, input);
  const why =
    now?.settles === true
      ? "the films at hand settle it already"
      : "no shift within reach settles it: points or angles are not sure enough";
  return {
    ...(now === undefined ? {} : { now }),
    candidates: [...candidates],
    ...(recommended === undefined ? {} : { recommended }),
    separation: molars.separated.map((one) => ({ ...one, source: molars.id })),
    overlap: neighbourOverlap(),
    basis: basisOf(input),
    cautions: cautionsOf(recommended),
    notComputed: [
      ...(recommended === undefined ? [{ name: "recommended", why }] : []),
      ...(now === undefined ? [{ name: "now", why: "films of one angle hold no depth" }] : []),
    ],
  };
}

function cautionsOf(recommended: TubeShiftOutput["recommended"]): string[] {
  const overlaps = neighbourOverlap().map(({ fromDeg }) => fromDeg);
  const far = recommended !== undefined && Math.abs(recommended.horizontalAngleDeg) >= Math.min(...overlaps);
  return [
    "A neighbour may lie over the root from some angle on (common practice: a shift of 20 to 30 degrees); look at the film at hand for which side is free.",
    ...(far ? ["At this angle neighbours of upper first premolars lie over the root in about half of the teeth."] : []),
    "The canal's depth is not known yet: the bend is supposed where the film shows its largest one, or in the second half of the canal.",
  ];
}

function basisOf({ wanted, sigmaMm, angleSigmaDeg, receptor }: TubeShiftInput): TubeShiftOutput["basis"] {
  return {
    formula: "Error propagation through the fit of twoView at a supposed course",
    assumptions: [
      `A bend that turns ${wanted.outOfFilmDeg} degrees out of the film's plane is looked for, to buccal and to lingual alike; 20 where nothing else is said: as much as takes a straight canal through the moderate class of Schneider.`,
      `The standard deviation of a point is ${sigmaMm} mm, of an angle ${angleSigmaDeg} degrees, on the next film as on those at hand.`,
      receptor === "unknown"
        ? "How the receptor is held is not known: the less sure of both ways is given."
        : `The receptor ${receptor === "fixed" ? "stays in place while the tube is shifted" : "turns with the beam"}.`,
      "The rays are parallel; under 10 degrees of shift no side is told.",
    ],
    sources: sources.map(({ id }) => id),
  };
}
