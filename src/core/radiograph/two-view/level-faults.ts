import type { Fault } from "../../refusal.ts";
import type { TwoViewInput, ViewInput } from "./two-view-input.ts";

/** What is wrong with the levels that a person fixed: each row has a place on every trace, and rows follow on each other. */
export function levelFaults({ views, levels = [] }: TwoViewInput): Fault[] {
  const lengths = views.map(lengthOnFilm);
  return levels.flatMap((row, index): Fault[] => {
    const path = `levels[${index}]`;
    if (row.length !== views.length)
      return [{ path, says: `holds ${row.length} distances for ${views.length} views; one for each is needed` }];
    const before = levels[index - 1] ?? [];
    return row.flatMap((along, view): Fault[] => {
      const at = `${path}[${view}]`;
      const length = lengths[view] ?? 0;
      if (along <= 0 || along >= length)
        return [
          {
            path: at,
            says: `${along} mm is not inside the trace, which is ${length.toFixed(1)} mm long; its ends are one level anyhow`,
          },
        ];
      if (along > (before[view] ?? -1)) return [];
      return [{ path: at, says: `${along} mm is not beyond the ${before[view]} mm of the row before it` }];
    });
  });
}

/** How long a trace is on its film. */
const lengthOnFilm = ({ points }: ViewInput): number =>
  points.reduce((sum, [u, v], index) => {
    const [u0, v0] = points[index - 1] ?? [u, v];
    return sum + Math.hypot(u - u0, v - v0);
  }, 0);
