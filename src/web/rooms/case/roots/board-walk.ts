import type { BoardLevel, CanalBoard } from "../../../../figures/canal-board.ts";
import type { LevelPlace } from "../../../../record/roots/root-step.ts";

/** The level that an arrow key leads to, as the drawing lies before the eye; undefined for another key or at the edge. */
export function levelBeside({ levels, columns }: CanalBoard, at: LevelPlace, key: string): LevelPlace | undefined {
  const here = levels.find((one) => one.root === at.root && one.level === at.level);
  if (here === undefined) return undefined;
  if (key === "ArrowUp" || key === "ArrowDown") {
    const way = key === "ArrowUp" ? -1 : 1;
    return nearest(
      levels.filter((one) => one.root === at.root && (one.y - here.y) * way > 0),
      here.y,
    );
  }
  if (key !== "ArrowLeft" && key !== "ArrowRight") return undefined;
  const next = columns[columns.findIndex(({ root }) => root === at.root) + (key === "ArrowLeft" ? -1 : 1)];
  return next === undefined
    ? undefined
    : nearest(
        levels.filter(({ root }) => root === next.root),
        here.y,
      );
}

function nearest(among: readonly BoardLevel[], y: number): LevelPlace | undefined {
  const [first] = [...among].sort((a, b) => Math.abs(a.y - y) - Math.abs(b.y - y));
  return first && { root: first.root, level: first.level };
}
