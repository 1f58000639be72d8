import { lowered } from "../../words/capital.ts";
import { wordsOfName } from "../../words/words-of-name.ts";
import type { PlaceLabels } from "./conflict-labels.ts";

/** One field in which two versions of a part differ. */
export interface FieldConflict {
  readonly name: string;
  readonly label: string;
  /** The places in it that differ, as read by a person. */
  readonly mine: readonly string[];
  readonly theirs: readonly string[];
}

/** The fields in which two bodies differ, each with the lines in which they do; labels stand for the names of the code. */
export function conflictFields(mine: unknown, theirs: unknown, labels: PlaceLabels = {}): readonly FieldConflict[] {
  const [left, right] = [fieldsOf(mine), fieldsOf(theirs)];
  const names = [...new Set([...left.keys(), ...right.keys()])];
  return names.flatMap((name) => {
    const [a = [], b = []] = [left, right].map((body) => linesOf(body.get(name), { said: "", place: name }, labels));
    const onlyMine = a.filter((line) => !b.includes(line));
    const onlyTheirs = b.filter((line) => !a.includes(line));
    if (onlyMine.length === 0 && onlyTheirs.length === 0) return [];
    return [{ name, label: labels[name] ?? wordsOfName(name), mine: onlyMine, theirs: onlyTheirs }];
  });
}

/** A body that takes each named field from one version and the rest from the other's. */
export function mergedBody(mine: unknown, theirs: unknown, keepTheirs: ReadonlySet<string>): unknown {
  const [left, right] = [fieldsOf(mine), fieldsOf(theirs)];
  const names = [...new Set([...left.keys(), ...right.keys()])];
  const kept = names.map((name) => [name, keepTheirs.has(name) ? right.get(name) : left.get(name)] as const);
  return Object.fromEntries(kept.filter(([, value]) => value !== undefined));
}

const fieldsOf = (body: unknown): ReadonlyMap<string, unknown> =>
  new Map(typeof body === "object" && body !== null ? Object.entries(body) : []);

/** The way to a value: as it is said, and by the names of the code, without rows. */
interface Way {
  readonly said: string;
  readonly place: string;
}

/** Every value inside a value on a line of its own, with the way to it. */
function linesOf(value: unknown, way: Way, labels: PlaceLabels): readonly string[] {
  if (value === undefined) return [];
  if (typeof value !== "object" || value === null) return [`${way.said === "" ? "" : `${way.said}: `}${plain(value)}`];
  const inner = Array.isArray(value)
    ? value.map((item, index) => [nameOf(item) ?? String(index + 1), way.place, item] as const)
    : Object.entries(value).map(([name, item]) => {
        const place = `${way.place}.${name}`;
        return [lowered(labels[place] ?? wordsOfName(name)), place, item] as const;
      });
  return inner.flatMap(([name, place, item]) =>
    linesOf(item, { said: way.said === "" ? name : `${way.said}, ${name}`, place }, labels),
  );
}

/** What a row is called by, so that rows of both versions line up. */
function nameOf(item: unknown): string | undefined {
  for (const field of ["canal", "tooth", "name", "flag", "reader"]) {
    const value: unknown = typeof item === "object" && item !== null ? Reflect.get(item, field) : undefined;
    if (typeof value === "string") return value;
  }
  return undefined;
}

function plain(value: unknown): string {
  if (value === true) return "yes";
  if (value === false) return "no";
  return value === "" ? "empty" : String(value);
}
