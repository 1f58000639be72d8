import { canalName } from "../../../record/values.ts";
import type { Mark } from "./mark-shape.ts";

/** The names to offer for a new course: those without a course on this film first. */
export function namesToOffer(names: readonly string[], marks: readonly Mark[]): string[] {
  const traced = new Set(marks.flatMap(({ body }) => (body.shape === "trace" ? (body.canal ?? []) : [])));
  return [...names.filter((name) => !traced.has(name)), ...names.filter((name) => traced.has(name))];
}

/** Whether the record accepts a text as the name of a canal. */
export const isCanalName = (text: string): boolean => canalName.safeParse(text).success;
