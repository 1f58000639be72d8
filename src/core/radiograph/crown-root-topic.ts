import grossmann from "../../../data/grossmann-sadan-2005/source.json" with { type: "json" };
import { type Interval, sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import {
  type CrownRootInput,
  type CrownRootOutput,
  crownRootInput,
  crownRootOutput,
} from "./drawn-measures/crown-root-input.ts";
import { errorAssumptions, lengthIntervals } from "./drawn-measures/film-errors.ts";
import { type PartsOfAxis, partsOfAxis } from "./drawn-measures/parts-of-axis.ts";
import { intervalAround } from "./interval-around.ts";

const sources = sourcesOf([grossmann]);

/**
 * How long crown and root are on a film and their ratio, with intervals.
 * @throws Refusal `input.impossible` where cusp and apex are one place, or the level does not lie between them.
 * @source plane geometry; Grossmann and Sadan 2005 for the two ratios (memory); docs/methods/crown-root.md
 */
export const crownRootTopic = defineTopic({
  name: "crownRoot",
  version: 1,
  summary: "The ratio of crown to root on a film, clinical or anatomical, with an interval.",
  input: crownRootInput,
  output: crownRootOutput,
  sources,
  compute: crownRoot,
});

const noScale = "the film has no scale: the ratio alone can be told";

function crownRoot(input: CrownRootInput): CrownRootOutput {
  const parts = partsOfAxis(input);
  const inMm = input.unit !== "px";
  return {
    ...(inMm ? { crownMm: parts.crown, rootMm: parts.root } : {}),
    crownToRoot: parts.crown / parts.root,
    kind: input.levelIs === "boneCrest" ? "clinical" : "anatomical",
    foot: parts.foot,
    intervals: intervalsOf(parts, input, inMm),
    basis: {
      formula: "Crown and root along the line from cusp to apex, parted at the foot of the level on it",
      assumptions: [
        "Crown and root lie in one plane, so that both are shown at one size.",
        ...(inMm ? errorAssumptions(input) : assumptionsInPx(input)),
        "An error of the scale changes both lengths by one share and leaves the ratio.",
      ],
      sources: sources.map(({ id }) => id),
    },
    cautions: cautionsOf(input),
    notComputed: inMm ? [] : ["crownMm", "rootMm"].map((name) => ({ name, why: noScale })),
  };
}

function intervalsOf(
  { crown, root, clickShare }: PartsOfAxis,
  input: CrownRootInput,
  inMm: boolean,
): Record<string, Interval> {
  const sigma = inMm ? input.sigmaMm : input.sigmaPx;
  if (sigma === undefined) return {};
  const lengths = {
    crownMm: { mm: crown, clickShare: clickShare.crown },
    rootMm: { mm: root, clickShare: clickShare.root },
  };
  return {
    ...(inMm ? lengthIntervals(lengths, input) : {}),
    crownToRoot: intervalAround(crown / root, clickShare.ratio * sigma),
  };
}

const assumptionsInPx = ({ sigmaPx }: CrownRootInput): string[] => [
  sigmaPx === undefined
    ? "No click error is given, so there are no intervals."
    : `Each click errs by itself by ${sigmaPx} px in each direction (standard deviation).`,
  "A pixel is as high as it is wide.",
];

function cautionsOf({ levelIs, unit }: CrownRootInput): string[] {
  const other =
    levelIs === "boneCrest"
      ? "anatomical ratio, at the cemento-enamel junction,"
      : "clinical ratio, at the bone crest,";
  return [
    `The ${other} is another number: say which one is meant.`,
    "A steep beam shortens root and crown by different shares: the ratio holds for this projection.",
    ...(unit === "px" ? ["Pixels are taken as square: the film does not say."] : []),
  ];
}
