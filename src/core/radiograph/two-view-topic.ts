import clark from "../../../data/clark-1910/source.json" with { type: "json" };
import estrela from "../../../data/estrela-2008/source.json" with { type: "json" };
import gunday from "../../../data/gunday-2005/source.json" with { type: "json" };
import hartley from "../../../data/hartley-zisserman-2003/source.json" with { type: "json" };
import pruett from "../../../data/pruett-1997/source.json" with { type: "json" };
import richards from "../../../data/richards-1980/source.json" with { type: "json" };
import schneider from "../../../data/schneider-1971/source.json" with { type: "json" };
import weine from "../../../data/weine-1982/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { anglesOfViews } from "./two-view/angles-of-views.ts";
import { bothAnswers } from "./two-view/both-answers.ts";
import { checkViews } from "./two-view/check-views.ts";
import { levelViews } from "./two-view/ready-views.ts";
import { sideOnly } from "./two-view/side-only.ts";
import { answerFor } from "./two-view/two-view-answer.ts";
import { twoViewCautions } from "./two-view/two-view-cautions.ts";
import { type TwoViewInput, twoViewInput } from "./two-view/two-view-input.ts";
import { type TwoViewOutput, twoViewOutput } from "./two-view/two-view-output.ts";

const sources = sourcesOf([clark, hartley, schneider, weine, pruett, gunday, estrela, richards]);
const curvatureSources = [schneider, weine, pruett, gunday, estrela].map(({ id }) => id);

/**
 * The course of a canal in space from two or more films under different horizontal angles, and what one film hides of it.
 * @throws Refusal `input.impossible` for one view, equal angles, traces that do not run the same way, landmarks in line;
 * `input.notDeterminable` where an angle is absent and nothing fixes it or its side; `trace.tooFewPoints`.
 * @source Clark 1910 (memory), Richards (seen), Hartley and Zisserman 2003 (memory); docs/methods/two-view.md
 */
export const twoViewTopic = defineTopic({
  name: "twoView",
  version: 3,
  summary: "A canal's course in space from films at two angles: true bend, hidden part, and side.",
  input: twoViewInput,
  output: twoViewOutput,
  sources,
  compute: twoView,
});

function twoView(input: TwoViewInput): TwoViewOutput {
  checkViews(input);
  const level = levelViews(input);
  const kinds = input.receptor === "unknown" ? (["turnsWithBeam", "fixed"] as const) : ([input.receptor] as const);
  const answers = kinds.flatMap((receptor) => {
    const angles = anglesOfViews(input, level, receptor);
    return angles === undefined ? [] : [answerFor(input, level, angles, { receptor, sources: curvatureSources })];
  });
  const [one, other] = answers;
  if (one === undefined) return sideOnly(input, level);
  const values = other === undefined ? one.values : bothAnswers(one.values, other.values);
  const cautions = [
    ...twoViewCautions(one),
    ...(other === undefined
      ? []
      : [
          "It is not known how the receptor was held: values are those of one that turns with the beam, intervals hold both.",
        ]),
    ...solvedCautions(input, one.anglesDeg),
  ];
  return {
    ...values,
    receptorRead: one.receptor,
    basis: basisOf(input, one.solved.sigmaMm),
    cautions: [...new Set(cautions)],
    notComputed: notComputed(values),
  };
}

function solvedCautions({ views }: TwoViewInput, anglesDeg: readonly number[]): string[] {
  const absent = views.flatMap(({ horizontalAngleDeg }, index) => (horizontalAngleDeg === undefined ? [index] : []));
  const none = absent.length === views.length ? ["No angle was stated: the first view is taken as straight on."] : [];
  const solved = absent.filter((index) => index > 0 || absent.length < views.length);
  return [
    ...none,
    ...solved.map(
      (index) =>
        `The angle of views[${index}] was solved from the landmarks: ${(anglesDeg[index] ?? 0).toFixed(1)} degrees.`,
    ),
  ];
}

function notComputed(values: Pick<TwoViewOutput, "plane" | "liesSide">) {
  return [
    ...(values.plane === undefined ? [{ name: "plane", why: "the course is straight: it turns in no plane" }] : []),
    ...(values.liesSide === undefined
      ? ["liesSide", "liesBuccallyMm"].map((name) => ({ name, why: "no landmark is marked on every view" }))
      : []),
  ];
}

function basisOf(input: TwoViewInput, sigmaMm: number): TwoViewOutput["basis"] {
  const { receptor, geometry, units, angleSigmaDeg } = input;
  return {
    formula:
      "Courses of straight parts, arcs and ramps in space, fitted to the points of all films through their projections",
    assumptions: [
      receptor === "unknown"
        ? "How the receptor was held is not known; both ways are computed."
        : `The receptor ${receptor === "fixed" ? "stayed in place while the tube was shifted" : "turned with the beam"}.`,
      geometry === undefined
        ? "The rays are parallel."
        : `The tube stood ${geometry.sourceToToothMm} mm from the tooth's axis; ${units === "detectorMm" ? `the detector ${geometry.toothToDetectorMm ?? 0} mm behind it` : "millimetres are those of the plane of the tooth"}.`,
      input.countedFrom === "orifice"
        ? "u and v are counted from the first point, the traced orifice, which is the same place on every film, as the last point is."
        : "u and v are counted from one shared point, as given.",
      `The standard deviation of a point is ${sigmaMm.toFixed(3)} mm (${input.sigmaMm === undefined ? "estimated" : "stated, or more where the points scatter more"}), of an angle ${angleSigmaDeg} degrees.`,
      "The films are calibrated and level with each other, apart from what common landmarks show.",
    ],
    sources: sources.map(({ id }) => id),
  };
}
