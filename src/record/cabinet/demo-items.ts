import type { CabinetGesture, CabinetOperation } from "./cabinet-gesture.ts";
import type { CabinetItem, CabinetItemOf } from "./cabinet-item.ts";

/** What a gesture would put that does not stand yet; undefined where all of it stands. */
export function withoutStanding(gesture: CabinetGesture, items: readonly CabinetItem[]): CabinetGesture | undefined {
  const stand = new Set(items.map(({ id }) => id));
  return unlessEmpty({ ...gesture, operations: gesture.operations.filter(({ id }) => !stand.has(id)) });
}

/**
 * The gesture that takes the demo out of a cabinet; undefined where nothing of it is there. A demo instrument that the
 * clinic's own files or sequences name, and a demo material that its own templates name, stay as the clinic's own.
 */
export function demoTakenOut(items: readonly CabinetItem[]): CabinetGesture | undefined {
  const named = new Set(items.filter(({ body }) => body.demo !== true).flatMap(namedBy));
  const operations = items
    .filter(({ body }) => body.demo === true)
    .map((item): CabinetOperation => (isNamable(item) && named.has(item.id) ? asOwn(item) : taken(item)));
  return unlessEmpty({ words: "The demo's cabinet taken out", operations });
}

const unlessEmpty = (gesture: CabinetGesture): CabinetGesture | undefined =>
  gesture.operations.length === 0 ? undefined : gesture;

function namedBy(item: CabinetItem): readonly string[] {
  if (item.kind === "file") return [item.body.instrument];
  if (item.kind === "template") return item.body.stock;
  return item.kind === "sequence" ? item.body.steps.map(({ instrument }) => instrument) : [];
}

type Namable = CabinetItemOf<"instrument"> | CabinetItemOf<"stock">;
const isNamable = (item: CabinetItem): item is Namable => item.kind === "instrument" || item.kind === "stock";

function asOwn(item: Namable): CabinetOperation {
  const { id, revision } = item;
  if (item.kind === "instrument") {
    const { demo: _demo, ...body } = item.body;
    return { op: "put", id, kind: "instrument", baseRevision: revision, body };
  }
  const { demo: _demo, ...body } = item.body;
  return { op: "put", id, kind: "stock", baseRevision: revision, body };
}

const taken = ({ id, kind, revision }: CabinetItem): CabinetOperation => ({
  ...{ op: "remove", id, kind, baseRevision: revision },
});
