import type { CourseRead } from "../../../ledger/course-in-space.ts";
import type { LevelTick } from "./level-ticks.ts";

/** The share of the course in space that lies at the height of a share of the trace on one film. */
export function courseShareOf(
  { course }: Pick<CourseRead, "course">,
  ticks: readonly LevelTick[],
  { film, share }: { readonly film: number; readonly share: number },
): number {
  const zMm = between(
    ticks.map((tick) => ({ from: tick.shares[film] ?? 0, to: tick.zMm })),
    share,
  );
  let best = 0;
  course.forEach(([, , z], index) => {
    if (Math.abs(z - zMm) < Math.abs((course[best]?.[2] ?? 0) - zMm)) best = index;
  });
  return best / Math.max(1, course.length - 1);
}

/** The share of the trace on a film that lies at the height of a share of the course in space. */
export function traceShareOf(
  { course }: Pick<CourseRead, "course">,
  ticks: readonly LevelTick[],
  { film, share }: { readonly film: number; readonly share: number },
): number {
  const zMm = course[Math.round(share * (course.length - 1))]?.[2] ?? 0;
  return between(
    ticks.map((tick) => ({ from: tick.zMm, to: tick.shares[film] ?? 0 })),
    zMm,
  );
}

/** The value between the two neighbours of a key; beyond the ends the value of the end. */
function between(steps: readonly { readonly from: number; readonly to: number }[], key: number): number {
  const after = steps.findIndex(({ from }) => from >= key);
  const end = steps[after < 0 ? steps.length - 1 : after];
  const start = steps[after < 0 ? steps.length - 1 : after - 1] ?? end;
  if (start === undefined || end === undefined) return 0;
  const share = end.from > start.from ? (key - start.from) / (end.from - start.from) : 0;
  return start.to + (end.to - start.to) * Math.min(1, Math.max(0, share));
}
