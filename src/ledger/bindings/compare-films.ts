import { compareFilmsTopic } from "../../core/radiograph/compare-films-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { filmScale } from "../film-scale.ts";
import { type LesionPair, lesionPairs } from "../lesion-pairs.ts";

/** What changed between the two films of each comparison; the films are named by their hash. */
export const compareFilmsBinding: Binding = {
  topic: compareFilmsTopic,
  ask: (context) => partsOf(context.parts, "comparison").map((part) => comparisonOf(part, context)),
};

/** A projective map has eight free numbers, and each landmark gives two. */
const leastLandmarks = 4;
/** About 100 bytes of memory go to each pixel of a comparison; larger films are not of one tooth. */
const mostPixels = 12e6;

type Comparison = PartOf<"comparison">;
type Film = PartOf<"film">;

function comparisonOf(part: Comparison, context: BindingContext): Question | Gap {
  const subject = `compareFilms of ${part.id}`;
  const [before, after] = [part.body.before, part.body.after].map((id) =>
    partsOf(context.parts, "film").find((film) => film.id === id),
  );
  const landmarks = { input: "landmarks", record: `${part.id}/landmarks` };
  const why = missing(part, before, after);
  if (before === undefined || after === undefined || why !== undefined)
    return { subject, why: why ?? "", inputPaths: [landmarks] };
  return { subject, ...askedAbout(part, { before, after }, context) };
}

/** What has to be supplied before the films can be compared, the first thing of it. */
function missing({ body }: Comparison, before: Film | undefined, after: Film | undefined): string | undefined {
  if (before === undefined || after === undefined)
    return "a film of this comparison is not in the case any more; choose another or take it back";
  const large = [before, after].find((film) => film.body.columns * film.body.rows > mostPixels);
  if (large !== undefined)
    return `a film of ${large.body.columns} x ${large.body.rows} px is too large to be compared; take in the part that shows the tooth`;
  const left = leastLandmarks - body.landmarks.length;
  if (left > 0)
    return `${body.landmarks.length} of ${leastLandmarks} landmarks are marked; mark ${left} more on both films, no three in line`;
  return undefined;
}

function askedAbout(part: Comparison, films: { before: Film; after: Film }, context: BindingContext) {
  const { before, after } = films;
  const { landmarks, hardParts } = part.body;
  const scale = filmScale(context, before.id);
  const [first, ...others] = lesionPairs(context.parts, before.id, after.id);
  const errors = [first, ...others].flatMap((pair) =>
    [pair?.before, pair?.after].flatMap((mark) => mark?.body.sigmaPx ?? []),
  );
  return {
    input: {
      before: { hash: before.body.hash },
      after: { hash: after.body.hash },
      landmarks: landmarks.map((one) => ({ before: one.before, after: one.after })),
      lesions: first === undefined ? {} : outlinesOf(first),
      ...(others.length === 0 ? {} : { others: others.map((pair) => ({ name: pair.name, ...outlinesOf(pair) })) }),
      ...(hardParts === undefined ? {} : { hardParts }),
      // The edge that is placed worst speaks for all: an interval too wide misleads nobody.
      sigmaPx: Math.max(context.settings.clickSigmaPx, ...errors),
      ...(scale === undefined ? {} : { mmPerPx: Math.sqrt(scale.mmPerPx.column * scale.mmPerPx.row) }),
    },
    inputPaths: [
      { input: "before.hash", record: `${before.id}/hash` },
      { input: "after.hash", record: `${after.id}/hash` },
      { input: "landmarks", record: `${part.id}/landmarks` },
      ...(hardParts === undefined ? [] : [{ input: "hardParts", record: `${part.id}/hardParts` }]),
      ...(first === undefined ? [] : pathsOf(first, "lesions")),
      ...others.flatMap((pair, index) => pathsOf(pair, `others[${index}]`)),
      { input: "sigmaPx", record: "settings/clickSigmaPx" },
      ...(scale === undefined ? [] : [{ input: "mmPerPx", record: `ledger/${scale.entryId}/mmPerPx` }]),
    ],
  };
}

const sides = ["before", "after"] as const;

const outlinesOf = (pair: LesionPair) =>
  Object.fromEntries(sides.flatMap((side) => (pair[side] === undefined ? [] : [[side, pair[side].body.points]])));

const pathsOf = (pair: LesionPair, at: string): InputPath[] =>
  sides.flatMap((side) => {
    const mark = pair[side];
    if (mark === undefined) return [];
    const points = { input: `${at}.${side}`, record: `${mark.id}/points` };
    return mark.body.sigmaPx === undefined ? [points] : [points, { input: "sigmaPx", record: `${mark.id}/sigmaPx` }];
  });
