import type { ImagePoint } from "../../../core/units.ts";
import type { PartOf } from "../../../record/parts.ts";
import { pairOf, pointOf } from "./film-point.ts";

/** A mark on a film as it stands in the case. */
export type Mark = PartOf<"mark">;
/** What a mark holds. */
export type MarkBody = Mark["body"];

/** The places that a person can take hold of: anchors of a course, ends of a length, corners of an outline, the spot. */
export function handlesOf(body: MarkBody): ImagePoint[] {
  switch (body.shape) {
    case "trace":
      return body.anchors.map(pointOf);
    case "outline":
      return body.points.map(pointOf);
    case "spot":
      return [pointOf(body.at)];
    default:
      return [pointOf(body.from), pointOf(body.to)];
  }
}

/** The line that a mark draws; a spot has one point, an outline comes back to its first. */
export function lineOf(body: MarkBody): ImagePoint[] {
  if (body.shape === "trace") return body.points.map(pointOf);
  const handles = handlesOf(body);
  return body.shape === "outline" ? [...handles, ...handles.slice(0, 1)] : handles;
}

/** A mark other than a course with one of its places moved. */
export function withHandleAt(body: Exclude<MarkBody, { shape: "trace" }>, index: number, to: ImagePoint): MarkBody {
  if (body.shape === "spot") return { ...body, at: pairOf(to) };
  if (body.shape === "outline") return { ...body, points: body.points.with(index, pairOf(to)) };
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
      return body.what === "" ? "spot" : body.what;
  }
}
