import caputo from "../../../data/caputo-standlee-1976/source.json" with { type: "json" };
import lim from "../../../data/lim-stock-1987/source.json" with { type: "json" };
import ossareh from "../../../data/ossareh-2018/source.json" with { type: "json" };
import { type Basis, sourcesOf } from "../basis.ts";
import { planSources } from "../diagnosis/plan/plan-sources.ts";
import { defineTopic } from "../topic.ts";
import { type CanalBending, canalBending } from "./canal-bending.ts";
import { caseFacts } from "./removal/case-facts.ts";
import { type CoursePlaces, coursePlaces } from "./removal/course-places.ts";
import { differenceDrivers } from "./removal/difference-drivers.ts";
import { figuresDecide } from "./removal/figures-decide.ts";
import { headPlace } from "./removal/head-place.ts";
import { platformAtHead } from "./removal/platform.ts";
import { perforationArm, sealedArm } from "./removal/published-arms.ts";
import { outcomeSourceIds } from "./removal/published-figures.ts";
import { removalReasons } from "./removal/reasons.ts";
import { cautionFiles, removalCautions } from "./removal/removal-cautions.ts";
import { removalChances } from "./removal/removal-chance.ts";
import { checkRemoval } from "./removal/removal-faults.ts";
import { removalMissing } from "./removal/removal-missing.ts";
import { seenAndHidden } from "./removal/seen-and-hidden.ts";
import { seriesFiles } from "./removal/series-rows.ts";
import { sightLine } from "./removal/sight-line.ts";
import { tellPatient } from "./removal/tell-patient.ts";
import { type WayInputs, wayInputs } from "./removal/way-inputs.ts";
import { estimateOf, weighedWays } from "./removal/weighed-ways.ts";
import { assumedInnerSide, type RemovalInput, removalInput } from "./removal-input.ts";
import { type RemovalOutput, removalOutput } from "./removal-output.ts";

const sources = [
  ...sourcesOf([...seriesFiles, lim, caputo, ossareh, ...cautionFiles]),
  ...sourcesOf(planSources.filter(({ id }) => outcomeSourceIds.includes(id))),
];

/**
 * Whether to take a separated instrument out, pass it or leave it: line of sight, platform, wall left, published chances,
 * and the outcome of each way with its interval.
 * @throws Refusal `input.impossible` for a head or wall beyond the course, a fragment longer than it, a head wider than the
 * canal, a platform wider than the root or outside it, a side given twice; `trace.tooFewPoints`
 * @source the folders of data/ that it names (seen or memory, by row); docs/methods/removal.md
 */
export const removalTopic = defineTopic({
  name: "removal",
  version: 1,
  summary: "Whether to take a separated instrument out, pass it or leave it: wall left, published chances, outcomes.",
  input: removalInput,
  output: removalOutput,
  sources,
  compute: removal,
});

interface Course {
  readonly places: CoursePlaces;
  readonly bending: CanalBending;
}

function removal(asked: RemovalInput): RemovalOutput {
  const course = courseOf(asked);
  const input = withDepth(asked, course);
  checkRemoval(input, course?.places.lengthMm);
  const geometry = geometryOf(input, course);
  const removalChance = removalChances(caseFacts(input, geometry.place));
  const inputs = wayInputs(input, removalChance);
  const perforation = perforationOf(inputs);
  const ways = weighedWays(input, inputs);
  const visibility = seenAndHidden();
  return {
    ...geometry,
    ...{ removalChance, visibility, perforation, ways, ...figuresDecide(ways), drivers: differenceDrivers(inputs) },
    reasons: removalReasons(input, { ...geometry, removalChance, perforation }),
    tellPatient: tellPatient({ ...geometry, removalChance, ways, perforation }),
    basis: basisOf(input),
    cautions: removalCautions(input, { ...geometry, visibility }, course?.places.lengthMm),
    notComputed: removalMissing(input, geometry),
  };
}

function courseOf({ course }: RemovalInput): Course | undefined {
  if (course === undefined) return undefined;
  // The bending comes first: it refuses what can't be a course, with its path.
  const bending = canalBending(course, "course");
  return { bending, places: coursePlaces(course) };
}

/** A course that ends at the head says how deep that lies. */
function withDepth(input: RemovalInput, course: Course | undefined): RemovalInput {
  if (course === undefined || input.courseEnds !== "head") return input;
  const { fragment } = input;
  return { ...input, fragment: { ...fragment, headDepthMm: fragment.headDepthMm ?? course.places.lengthMm } };
}

function geometryOf(input: RemovalInput, course: Course | undefined) {
  const depth = input.fragment.headDepthMm;
  const line = course === undefined || depth === undefined ? undefined : sightLine(input, course.places, depth);
  const platform = platformAtHead(input);
  return {
    ...(line === undefined ? {} : { sightLine: line }),
    ...(platform === undefined ? {} : { platform }),
    place: headPlace(input, course?.bending),
  };
}

const perforationOf = (inputs: WayInputs): RemovalOutput["perforation"] => ({
  chance: estimateOf(inputs, ({ perforation }) => perforation),
  healed: estimateOf(inputs, ({ sealed }) => sealed),
  from: [...perforationArm.from, ...sealedArm.from],
});

function basisOf({ seed = 1, draws = 4_000, innerSide, canalDiameterMm, fragment }: RemovalInput): Basis {
  return {
    formula:
      "Distance of the course from its chord; head + 2 clearance; wall - (platform - canal) / 2 - off-centre; (1 - q)(l + g (f - l)) + q p l",
    assumptions: [
      innerSide === undefined
        ? `Nobody said towards which side the canal bends (innerSide): the straight line is taken to run towards the ${assumedInnerSide} side.`
        : `The straight line runs towards the ${innerSide} side of the canal, as told.`,
      fragment.headDiameterMm !== undefined && canalDiameterMm !== undefined
        ? "The line is as wide as the head, and the canal as wide as at the head all along."
        : "The line and the canal have no width where one of both is not known.",
      "Walls change along straight lines between the places where they are known.",
      "The root is round where its moment of inertia is told; load to fracture followed that with R2 = 0.52 in one series.",
      "Counts are uncertain as a beta distribution with the prior of Jeffreys; series are as likely as each other, none is pooled.",
      "Where a failed attempt did not perforate, the tooth heals as with a fragment left.",
      "A perforated tooth heals where both the sealed perforation and, as with a fragment left, the root's end heal.",
      "A removed fragment leaves a tooth that heals as one in which none broke; a bypass reaches anything from none to all of that.",
      "Of the successes of a series that counts both, any share may be bypasses.",
      "Bypassing alone was counted in hidden fragments; that stands for seen ones as well.",
      "The inputs of a sum are independent of each other.",
      `${draws} draws with seed ${seed}; the means are exact.`,
    ],
    sources: sources.map(({ id }) => id),
  };
}
