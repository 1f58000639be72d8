import type { ImagePoint } from "../../../core/units.ts";
import type { FilmMeasure } from "../../../figures/film-measure.ts";
import type { PartOf } from "../../../record/parts.ts";
import { pairOf, pointOf } from "./film-point.ts";

/** A mark on a film as it stands in the case. */
export type Mark = PartOf<"mark">;
/** What a mark holds. */
export type MarkBody = Mark["body"];
/** What a mark of one shape holds. */
export type BodyOfShape<Shape extends MarkBody["shape"]> = Extract<MarkBody, { shape: Shape }>;
/** A mark whose line follows what the film shows from one of its places to the next. */
export type FollowedBody = BodyOfShape<"trace" | "fragment">;

/** Whether a mark's line follows what the film shows. */
export const isFollowed = (body: MarkBody): body is FollowedBody => body.shape === "trace" || body.shape === "fragment";

/** Which lines of the film a mark follows: a fragment is bright. */
export const polarityOf = (body: FollowedBody): "dark" | "bright" =>
  body.shape === "trace" ? body.polarity : "bright";

/** The places that a person can take hold of: anchors of a course, ends of a length, corners of an outline, the spot. */
export function handlesOf(body: MarkBody): ImagePoint[] {
  switch (body.shape) {
    case "trace":
    case "fragment":
      return body.anchors.map(pointOf);
    case "outline":
      return body.points.map(pointOf);
    case "spot":
      return [pointOf(body.at)];
    case "crownRoot":
      return [body.crown, body.level, body.apex].map(pointOf);
    default:
      return [pointOf(body.from), pointOf(body.to)];
  }
}

/** The line that a mark draws; a spot has one point, an outline comes back to its first. */
export function lineOf(body: MarkBody): ImagePoint[] {
  if (isFollowed(body)) return body.points.map(pointOf);
  const handles = handlesOf(body);
  return body.shape === "outline" ? [...handles, ...handles.slice(0, 1)] : handles;
}

/** The places of a crown and root, as they are taken hold of. */
const placesOfAxis = ["crown", "level", "apex"] as const;

/** A mark as it is drawn over the film, without what the ledger makes of it. */
export function measureOfBody(body: MarkBody): FilmMeasure {
  switch (body.shape) {
    case "trace":
    case "fragment":
    case "outline":
      return { kind: body.shape, points: body.points };
    case "spot":
      return { kind: "spot", at: body.at };
    case "knownLength":
      return { kind: "known", from: body.from, to: body.to };
    case "distance":
      return { kind: "length", from: body.from, to: body.to };
    case "wall":
      return { kind: "wall", from: body.from, to: body.to };
    case "crownRoot":
      return { kind: "crownRoot", crown: body.crown, level: body.level, foot: footOf(body), apex: body.apex };
  }
}

/** The foot of a level on the line from cusp to apex, for drawing: lengths come from the ledger. */
function footOf({ crown, level, apex }: BodyOfShape<"crownRoot">): [number, number] {
  const [u, v] = [apex[0] - crown[0], apex[1] - crown[1]];
  const squared = u * u + v * v || 1;
  const share = ((level[0] - crown[0]) * u + (level[1] - crown[1]) * v) / squared;
  return [crown[0] + share * u, crown[1] + share * v];
}

/** A mark other than a followed line with one of its places moved. */
export function withHandleAt(body: Exclude<MarkBody, FollowedBody>, index: number, to: ImagePoint): MarkBody {
  if (body.shape === "spot") return { ...body, at: pairOf(to) };
  if (body.shape === "outline") return { ...body, points: body.points.with(index, pairOf(to)) };
  if (body.shape === "crownRoot") return { ...body, [placesOfAxis[index] ?? "level"]: pairOf(to) };
  return index === 0 ? { ...body, from: pairOf(to) } : { ...body, to: pairOf(to) };
}

/** What a mark is called in a list or a sentence. */
export function markName(body: MarkBody): string {
  switch (body.shape) {
    case "trace":
      return body.canal ?? "unnamed canal";
    case "knownLength":
      return `known length of ${body.lengthMm} mm`;
    case "distance":
      return body.what === "" ? "distance" : body.what;
    case "outline":
      return body.what === "" ? "outline" : body.what;
    case "spot":
      return spotName(body);
    case "fragment":
      return body.canal === undefined ? "fragment" : `fragment in ${body.canal}`;
    case "crownRoot":
      return body.root === undefined ? "crown and root" : `crown and ${body.root} root`;
    case "wall":
      return `${body.side === undefined ? "" : `${body.side} `}wall${ownerOf(body, " of ")}`;
  }
}

function spotName(body: BodyOfShape<"spot">): string {
  if (body.is === "fillingEnd") return `filling's end${ownerOf(body, " of ")}`;
  if (body.is === "level") return `${body.what === "" ? "level" : body.what}${ownerOf(body, " in ")}`;
  if (body.is === "apex") return `apex${ownerOf(body, " ")}`;
  return body.what === "" ? "spot" : body.what;
}

const ownerOf = (
  { canal, root }: { canal?: string | undefined; root?: string | undefined },
  between: string,
): string => {
  const owner = canal ?? root;
  return owner === undefined ? "" : `${between}${owner}`;
};
