/** A place in a part's body: names and row numbers joined by dots, as `canals.0.locatorMm`. */
export type BodyPath = string;

/** What stands at a place of a body; undefined where nothing does. */
export function valueAt(body: unknown, at: BodyPath): unknown {
  if (at === "") return body;
  return at.split(".").reduce<unknown>((value, name) => (isHolder(value) ? Reflect.get(value, name) : undefined), body);
}

/** The body with another value at one place; undefined takes a field out. The body given stays as it is. */
export function withValueAt(body: unknown, at: BodyPath, value: unknown): unknown {
  if (at === "") return value;
  const [name = "", ...rest] = at.split(".");
  const inner = withValueAt(isHolder(body) ? Reflect.get(body, name) : undefined, rest.join("."), value);
  if (Array.isArray(body)) return body.map((item, index) => (String(index) === name ? inner : item));
  const fields = Object.entries(isHolder(body) ? body : {}).filter(([field]) => field !== name);
  if (inner === undefined) return Object.fromEntries(fields);
  return { ...(isHolder(body) ? body : {}), [name]: inner };
}

const isHolder = (value: unknown): value is object => typeof value === "object" && value !== null;

/** A fault's path as the record writes it, `canals[0].locatorMm` or `operations[0].body.canals[0].locatorMm`, as a place of a body. */
export const placeOfFault = (path: string): BodyPath =>
  path
    .replace(/^operations\[0\]\.body(\.|$)/, "")
    .replace(/\[(\d+)\]/g, ".$1")
    .replace(/^\./, "");
