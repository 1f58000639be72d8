import type { BodyOf } from "../../../record/parts.ts";
import { canalName } from "../../../record/values.ts";
import type { Mark } from "./mark-shape.ts";

/** The names of a tooth's canals at their orifices: as the anatomy gives them, otherwise the root's name, numbered. */
export function canalNamesOf({ roots }: BodyOf<"anatomy">): string[] {
  return roots.flatMap(({ name, levels, orifices }): string[] => {
    const [first = 1] = levels;
    const count = typeof first === "number" ? first : first.canals;
    if (orifices !== undefined && orifices.length > 0) return [...orifices];
    return count === 1 ? [name] : Array.from({ length: count }, (_, index) => `${name}${index + 1}`);
  });
}

/** The names to offer for a new course: those without a course on this film first. */
export function namesToOffer(names: readonly string[], marks: readonly Mark[]): string[] {
  const traced = new Set(marks.flatMap(({ body }) => (body.shape === "trace" ? (body.canal ?? []) : [])));
  return [...names.filter((name) => !traced.has(name)), ...names.filter((name) => traced.has(name))];
}

/** Whether the record accepts a text as the name of a canal. */
export const isCanalName = (text: string): boolean => canalName.safeParse(text).success;
