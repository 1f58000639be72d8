import { pointsInPlane } from "../../core/radiograph/points-in-plane.ts";
import { twoViewTopic } from "../../core/radiograph/two-view-topic.ts";
import { px } from "../../core/units.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { filmScale } from "../film-scale.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";

/** The course in space of each canal that is traced on two films of one time under different known angles. */
export const twoViewBinding: Binding = {
  topic: twoViewTopic,
  ask: (context) => {
    const traced = angledTraces(context);
    const canals = [...new Set(traced.map(({ canal }) => canal))];
    return canals.flatMap((canal) => {
      const pair = pairOf(
        traced.filter((one) => one.canal === canal),
        context,
      );
      return pair === undefined ? [] : [courseOf(canal, pair, context)];
    });
  },
};

/** A canal's course on a film whose horizontal angle is known. */
interface AngledTrace {
  readonly canal: string;
  readonly angleDeg: number;
  readonly film: PartOf<"film">;
  readonly trace: MarkOf<"trace">;
}
type Pair = readonly [AngledTrace, AngledTrace];

/** Films farther apart in time than this may show another state of the tooth. */
const sameTimeDays = 60;
/** Angles nearer than this are one angle. */
const leastShiftDeg = 1;

/**
 * Courses of which one is so many times as long as the other are not of the same thing, as an instrument traced from its stop
 * and a filling; what differs by less is asked, and the topic says so.
 */
const mostStretch = 1.6;

/** Of several courses of one canal on one film, the last. */
function angledTraces({ parts }: BindingContext): AngledTrace[] {
  return partsOf(parts, "film").flatMap((film) => {
    const { horizontalAngleDeg: angleDeg } = film.body;
    if (angleDeg === undefined) return [];
    const last = new Map<string, AngledTrace>();
    for (const trace of marksOn(parts, film.id, "trace"))
      if (trace.body.canal !== undefined)
        last.set(trace.body.canal, { canal: trace.body.canal, angleDeg, film, trace });
    return [...last.values()];
  });
}

/** Of the pairs of one time, the one with the largest shift; of equal ones, that with the straightest film. */
function pairOf(traces: readonly AngledTrace[], context: BindingContext): Pair | undefined {
  const pairs = traces.flatMap((one, index) =>
    traces.slice(index + 1).flatMap((other): Pair[] => {
      if (shiftOf([one, other]) < leastShiftDeg || daysBetween(one, other) > sameTimeDays) return [];
      if (stretchOf([one, other], context) > mostStretch) return [];
      return [Math.abs(one.angleDeg) <= Math.abs(other.angleDeg) ? [one, other] : [other, one]];
    }),
  );
  return pairs.sort((a, b) => shiftOf(b) - shiftOf(a) || Math.abs(a[0].angleDeg) - Math.abs(b[0].angleDeg))[0];
}

const shiftOf = ([one, other]: Pair): number => Math.abs(one.angleDeg - other.angleDeg);
/** How many times as far the longer course reaches along its film, in mm where both films have a scale. */
function stretchOf(pair: Pair, context: BindingContext): number {
  const scales = pair.map(({ film }) => filmScale(context, film.id)?.mmPerPx.row);
  const [one = 1, other = 1] = pair.map(({ trace: { body } }, index) => {
    const rise = Math.abs((body.points.at(-1)?.[1] ?? 0) - (body.points[0]?.[1] ?? 0));
    return rise * (scales.includes(undefined) ? 1 : (scales[index] ?? 1));
  });
  return Math.max(one, other) / Math.max(1e-6, Math.min(one, other));
}

const daysBetween = (one: AngledTrace, other: AngledTrace): number =>
  Math.abs(Date.parse(one.film.body.takenOn) - Date.parse(other.film.body.takenOn)) / 86_400_000;

function courseOf(canal: string, pair: Pair, context: BindingContext): Question | Gap {
  const subject = `twoView of ${canal} ${pair.map(({ film }) => film.id).join(" ")}`;
  const why = missing(pair, context);
  if (why !== undefined) {
    const inputPaths = pair.map(({ trace }, index) => ({
      input: `views[${index}].points`,
      record: `${trace.id}/points`,
    }));
    return { subject, why, inputPaths };
  }
  const names = commonSpots(pair, context);
  const views = pair.map((one, index) => viewOf(one, index, { names, context }));
  const [first] = pair;
  const shares = views.flatMap(({ relativeSigma }) => relativeSigma ?? []);
  const scaleRelativeSigma = shares.length === 0 ? {} : { scaleRelativeSigma: Math.min(0.5, Math.max(...shares)) };
  return {
    subject,
    input: {
      views: views.map(({ view }) => view),
      receptor: first.film.body.receptor,
      sigmaMm: Math.max(...views.map(({ sigmaMm }) => sigmaMm)),
      ...scaleRelativeSigma,
    },
    inputPaths: [{ input: "receptor", record: `${first.film.id}/receptor` }, ...views.flatMap(({ paths }) => paths)],
  };
}

/** What has to be supplied before the pair can be computed, the first thing of it. */
function missing(pair: Pair, context: BindingContext): string | undefined {
  const names = pair.map(({ film }) => film.body.caption || film.id);
  const unscaled = pair.findIndex(({ film }) => filmScale(context, film.id) === undefined);
  if (unscaled >= 0) return `the film "${names[unscaled]}" has no scale; mark a known length on it`;
  const unturned = pair.findIndex(({ film }) => film.body.uRunsTo === "unknown");
  if (unturned >= 0)
    return `it is not known whether mesial or distal lies to the right on the film "${names[unturned]}"; say it in the film's facts`;
  const [one, other] = pair;
  if (one.film.body.receptor === other.film.body.receptor) return undefined;
  return "the receptor is said to have been held in two ways on the two films; make both the same in the films' facts";
}

/** The words of the spots that are marked once on both films. */
function commonSpots(pair: Pair, { parts }: BindingContext): string[] {
  const [one = [], other = []] = pair.map(({ film }) => marksOn(parts, film.id, "spot").map(({ body }) => body.what));
  const once = (words: readonly string[], word: string): boolean =>
    words.filter((found) => found === word).length === 1;
  return one.filter((word) => word !== "" && once(one, word) && once(other, word));
}

function viewOf(
  { film, trace, angleDeg }: AngledTrace,
  index: number,
  { names, context }: { names: readonly string[]; context: BindingContext },
) {
  const scale = filmScale(context, film.id);
  if (scale === undefined) throw new RangeError("a film without a scale is a gap");
  const inMm = (points: readonly (readonly [number, number])[]): [number, number][] =>
    pointsInPlane(
      points.map(([u, v]) => ({ column: px(u), row: px(v) })),
      scale.mmPerPx,
    ).map(({ x, y }) => [x, y]);
  const spots = marksOn(context.parts, film.id, "spot").filter(({ body }) => names.includes(body.what));
  const landmarks = Object.fromEntries(spots.map(({ body }) => [body.what, inMm([body.at])[0]]));
  const { verticalAngleDeg, uRunsTo } = film.body;
  const sigmaPx = trace.body.sigmaPx ?? context.settings.clickSigmaPx;
  const at = `views[${index}]`;
  const facts = ["horizontalAngleDeg", "uRunsTo", ...(verticalAngleDeg === undefined ? [] : ["verticalAngleDeg"])];
  const paths: InputPath[] = [
    ...facts.map((field) => ({ input: `${at}.${field}`, record: `${film.id}/${field}` })),
    { input: `${at}.points`, record: `${trace.id}/points` },
    { input: `${at}.points`, record: `ledger/${scale.entryId}/mmPerPx` },
    ...spots.map(({ id, body }) => ({ input: `${at}.landmarks.${body.what}`, record: `${id}/at` })),
    { input: "sigmaMm", record: trace.body.sigmaPx === undefined ? "settings/clickSigmaPx" : `${trace.id}/sigmaPx` },
    ...(scale.relativeSigma === undefined
      ? []
      : [{ input: "scaleRelativeSigma", record: `ledger/${scale.entryId}/relativeSigma` }]),
  ];
  return {
    paths,
    relativeSigma: scale.relativeSigma,
    sigmaMm: sigmaPx * Math.sqrt(scale.mmPerPx.column * scale.mmPerPx.row),
    view: {
      ...{ horizontalAngleDeg: angleDeg, uRunsTo, landmarks },
      ...(verticalAngleDeg === undefined ? {} : { verticalAngleDeg }),
      points: inMm(trace.body.points),
    },
  };
}
