import { type Fault, Refusal } from "../../refusal.ts";
import { directionFaults, tooShort } from "../two-view/check-views.ts";
import type { TubeShiftInput } from "./tube-shift-input.ts";

const title = "Cannot tell which shift of the tube serves";

/**
 * Refuses films from which no further angle can be worked out.
 * @throws Refusal `input.impossible` for no film, traces that run against each other or across the film;
 * `input.notDeterminable` for a film of unknown angle; `trace.tooFewPoints`.
 */
export function checkFilms({ views }: TubeShiftInput): void {
  const unsaid = views.flatMap(({ horizontalAngleDeg }, index): Fault[] =>
    horizontalAngleDeg === undefined
      ? [
          {
            path: `views[${index}].horizontalAngleDeg`,
            says: "is absent; the next angle is counted from those at hand",
          },
        ]
      : [],
  );
  const none = views.length === 0 ? [{ path: "views", says: "holds none; trace the canal on one film first" }] : [];
  refuse("input.impossible", none);
  refuse("input.notDeterminable", unsaid);
  refuse("trace.tooFewPoints", views.flatMap(tooShort));
  refuse("input.impossible", directionFaults(views));
}

function refuse(code: "input.impossible" | "input.notDeterminable" | "trace.tooFewPoints", faults: readonly Fault[]) {
  if (faults.length > 0) throw new Refusal(code, `${title}: the films do not allow it`, {}, faults);
}
