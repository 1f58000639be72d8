import { type BodyOf, type Part, type PartOf, partsOf } from "../record/parts.ts";

/** A mark of one shape. */
export type MarkOf<Shape extends BodyOf<"mark">["shape"]> = Omit<PartOf<"mark">, "body"> & {
  readonly body: Extract<BodyOf<"mark">, { shape: Shape }>;
};

/** The marks of one shape, on one film or, without a film, in the whole case. */
export function marksOn<Shape extends BodyOf<"mark">["shape"]>(
  parts: readonly Part[],
  film: string,
  shape: Shape,
): MarkOf<Shape>[] {
  const has = (mark: PartOf<"mark">): mark is PartOf<"mark"> & MarkOf<Shape> =>
    mark.body.shape === shape && mark.body.film === film;
  return partsOf(parts, "mark").filter(has);
}
