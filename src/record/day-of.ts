import type { Part } from "./parts.ts";

/** The day that a part stands for, or undefined where it has none. */
export function dayOf(part: Part): string | undefined {
  const body: object = part.body;
  for (const field of ["on", "takenOn", "madeOn", "presentedOn"]) {
    const value: unknown = Reflect.get(body, field);
    if (typeof value === "string") return value;
  }
  return undefined;
}
