import type { Mark } from "./mark-shape.ts";

/** Marks of one canal or root. */
export interface OwnedMarks {
  /** The canal or root; empty for what belongs to none. */
  readonly owner: string;
  readonly marks: readonly Mark[];
}

/** The marks of a film canal by canal, each canal's course first; what belongs to none comes last. */
export function marksByOwner(marks: readonly Mark[]): OwnedMarks[] {
  const owners = [...new Set(marks.map(ownerOf))].sort((a, b) =>
    a === "" ? 1 : b === "" ? -1 : a.localeCompare(b, "en", { numeric: true }),
  );
  return owners.map((owner) => ({
    owner,
    marks: marks
      .filter((mark) => ownerOf(mark) === owner)
      .sort((a, b) => Number(b.body.shape === "trace") - Number(a.body.shape === "trace")),
  }));
}

function ownerOf({ body }: Mark): string {
  if (body.shape === "knownLength" || body.shape === "distance" || body.shape === "outline") return "";
  return ("canal" in body ? body.canal : undefined) ?? body.root ?? "";
}
