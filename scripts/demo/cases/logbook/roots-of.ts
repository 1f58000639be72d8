import type { CanalRoot } from "../../../../src/core/tooth/canal-root.ts";
import { usualRoots } from "../../../../src/core/tooth/usual-roots.ts";
import type { Dice } from "./dice.ts";

/** The roots and canals that were found in a tooth: the usual ones, now and then another form; MB2 more often with practice. */
export function rootsOf(tooth: string, progress: number, dice: Dice): readonly CanalRoot[] {
  const place = `${Number(tooth[0]) <= 2 ? "upper" : "lower"}${tooth[1] ?? ""}`;
  const usual = usualRoots(tooth).roots;
  if (place === "upper6") return dice.chance(0.55 + 0.3 * progress) ? usual : withMesiobuccal(usual, [1]);
  if (place === "upper7") return dice.chance(0.2 + 0.2 * progress) ? withMesiobuccal(usual, [2, 1]) : usual;
  if (place === "lower6" && dice.chance(0.3)) return lowerWithFour(usual);
  if (/^lower[12]$/.test(place) && dice.chance(0.24)) return [{ name: "R", levels: [2, 1], orifices: ["B", "L"] }];
  if (place === "lower4" && dice.chance(0.14)) return [{ name: "R", levels: [1, 2], orifices: ["Single"] }];
  if (place === "upper5" && dice.chance(0.35)) return [{ name: "R", levels: [2, 1], orifices: ["B", "P"] }];
  return usual;
}

const withMesiobuccal = (roots: readonly CanalRoot[], levels: readonly number[]): readonly CanalRoot[] =>
  roots.map((root) =>
    root.name === "MB"
      ? {
          name: "MB",
          side: "buccal" as const,
          levels: [...levels],
          ...(levels[0] === 2 ? { orifices: ["MB1", "MB2"] } : {}),
        }
      : root,
  );

const lowerWithFour = (roots: readonly CanalRoot[]): readonly CanalRoot[] =>
  roots.map((root) => (root.name === "D" ? { name: "D", levels: [2, 1], orifices: ["DB", "DL"] } : root));
