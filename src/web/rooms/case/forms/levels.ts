import type { BodyOf } from "../../../../record/parts.ts";

type Level = BodyOf<"anatomy">["roots"][number]["levels"][number];

/** The course of a root's canals as it is written: `2-1-2`, a C-shaped section with its form: `1 C1-2 C3`. */
export function levelsInWords(levels: unknown): string {
  if (!Array.isArray(levels)) return "";
  return levels.map(levelInWords).join("-");
}

function levelInWords(level: Level): string {
  if (typeof level === "number") return String(level);
  return level.cShape === undefined ? String(level.canals) : `${level.canals} ${level.cShape}`;
}

/** What a written course means: a number of canals for each level from orifice to foramen. */
export function readLevels(text: string): { readonly value?: readonly Level[]; readonly fault?: string } {
  const parts = text
    .split("-")
    .map((part) => part.trim())
    .filter((part) => part !== "");
  const levels = parts.map(readLevel);
  if (levels.length === 0) return { fault: "at least one level, as 1 or 2-1" };
  const known = levels.filter((level) => level !== undefined);
  return known.length === levels.length ? { value: known } : { fault: "canals at each level, as 2-1-2 or 1 C1-2 C3" };
}

function readLevel(part: string): Level | undefined {
  const found = /^([0-6])(?:\s*(C[1-5]))?$/i.exec(part);
  if (found === null) return undefined;
  const cShape = cShapes.find((shape) => shape === found[2]?.toUpperCase());
  return cShape === undefined ? Number(found[1]) : { canals: Number(found[1]), cShape };
}

const cShapes = ["C1", "C2", "C3", "C4", "C5"] as const;

/** Names as they are written in one line. */
export const namesInWords = (names: unknown): string => (Array.isArray(names) ? names.join(" ") : "");

/** Names from one line; absent where there are none. */
export function readNames(text: string): { readonly value?: readonly string[] } {
  const names = text.split(/[\s,]+/).filter((name) => name !== "");
  return names.length === 0 ? {} : { value: names };
}
