import { type Part, type PartOf, partsOf, thePart } from "../record/parts.ts";
import { type MarkOf, marksOn } from "./marks-on.ts";

type Trace = MarkOf<"trace">;

/** Where a course begins: as it says, or on a film that measures length at the reference point, on any other at the orifice. */
export function startOfTrace({ body }: Trace, parts: readonly Part[]): "orifice" | "referencePoint" {
  const film = partsOf(parts, "film").find(({ id }) => id === body.film);
  return body.from ?? (film !== undefined && measuresLength(film) ? "referencePoint" : "orifice");
}

/** Whether a film was taken to measure length, with instruments or cones from the reference point on. */
const measuresLength = ({ body }: PartOf<"film">): boolean =>
  body.purpose === "workingLength" || body.purpose === "masterCone";

/** The better a course shows the canal itself, the earlier it is taken. */
const preferred = ["canal", "instrument", "filledCanal", "other"] as const;

/** The course of a canal on a film: of several the one that follows the canal itself, and of those the last. */
export function courseOnFilm(parts: readonly Part[], film: string, canal: string): Trace | undefined {
  const own = marksOn(parts, film, "trace").filter(({ body }) => body.canal === canal);
  const [kind] = preferred.filter((one) => own.some(({ body }) => (body.kind ?? "canal") === one));
  return own.findLast(({ body }) => (body.kind ?? "canal") === kind);
}

/** The root that a canal runs in, by the anatomy of the case. */
export function rootOfCanal(parts: readonly Part[], canal: string): string | undefined {
  const roots = thePart(parts, "anatomy")?.body.roots ?? [];
  return roots.find(({ name, orifices }) => name === canal || orifices?.includes(canal))?.name;
}
