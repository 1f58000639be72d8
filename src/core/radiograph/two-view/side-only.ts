import clark from "../../../../data/clark-1910/source.json" with { type: "json" };
import richards from "../../../../data/richards-1980/source.json" with { type: "json" };
import { faultAt } from "../../refusal.ts";
import { curvatureTopic } from "../curvature-topic.ts";
import { bendMovement, canalMovement, clarkSide, type TubeMove } from "./clark-side.ts";
import { commonLandmark } from "./common-landmark.ts";
import type { LevelView } from "./ready-views.ts";
import type { TwoViewInput } from "./two-view-input.ts";
import type { TwoViewOutput } from "./two-view-output.ts";

const usualSigmaMm = 0.05;
const depthless = ["points", "sigma", "course", "lengthMm", "curvature", "plane", "hiddenDeg", "levels", "turn"];

/**
 * What films of unknown angle tell: on which side the canal lies and to which side it bends, by how its image moves.
 * @throws Refusal `input.notDeterminable` where it is not said to which side the tube moved.
 * @source Clark CA, Proc R Soc Med 1910;3:87-90 (memory); docs/methods/two-view.md C15
 */
export function sideOnly(input: TwoViewInput, level: readonly LevelView[]): TwoViewOutput {
  const { index, moved } = movedView(input);
  const [first] = level;
  const second = level[index];
  if (first === undefined || second === undefined) throw new RangeError("there are two views");
  const sigmaMm = input.sigmaMm ?? usualSigmaMm;
  const bend = bendMovement(first, second, sigmaMm);
  const landmark = input.reference ?? commonLandmark(input);
  const canal = landmark === undefined ? undefined : canalMovement(first, second, landmark, sigmaMm);
  const why = "a tube angle is unknown, and no landmarks of known buccolingual separation fix it";
  return {
    apparent: input.views.map(({ points }) => angleOnFilm({ points: [...points], ...sigmaOf(input) })),
    side: clarkSide(bend.distalMm, moved, bend.explainedMm),
    ...(canal === undefined ? {} : { liesSide: clarkSide(canal.distalMm, moved, canal.explainedMm) }),
    matched: "byLevel",
    intervals: {},
    basis: {
      formula: "Movement of the image against the tube's shift",
      assumptions: [
        `The tube of views[${index}] stood to ${moved} of that of views[0].`,
        "A movement is read only where it is larger than noise and a foreshortening of 15 % explain.",
      ],
      sources: [clark.id, richards.id],
    },
    cautions: ["A tube angle is unknown: only sides are told, no depth, length or true bend."],
    notComputed: [
      ...depthless.map((name) => ({ name, why })),
      ...(canal === undefined ? [{ name: "liesSide", why: "no landmark is marked on every view" }] : []),
      { name: "liesBuccallyMm", why },
    ],
  };
}

/** The largest turn to one side that a film shows: an arc seen aslant may be read as two bends to the same side. */
function angleOnFilm(course: Parameters<typeof curvatureTopic.compute>[0]): number {
  let run = 0;
  let largest = 0;
  let before: string | undefined;
  for (const { angleDeg, side } of curvatureTopic.compute(course).bends) {
    run = side === before ? run + angleDeg : angleDeg;
    before = side;
    largest = Math.max(largest, run);
  }
  return largest;
}

const sigmaOf = ({ sigmaMm }: TwoViewInput) => (sigmaMm === undefined ? {} : { sigmaMm });

/** The first view of which it is known to which side of the first view's the tube stood. */
function movedView({ views }: TwoViewInput): { index: number; moved: TubeMove } {
  const index = views.findIndex(({ tubeMovedTo }, at) => at > 0 && tubeMovedTo !== undefined);
  const moved = views[index]?.tubeMovedTo;
  if (moved !== undefined) return { index, moved };
  const unknown = views.findLastIndex(({ horizontalAngleDeg }) => horizontalAngleDeg === undefined);
  throw faultAt(
    `views[${unknown}].horizontalAngleDeg`,
    "is absent: give it, or knownSeparation with two landmarks of known buccolingual separation (depth), or tubeMovedTo (side only)",
    "input.notDeterminable",
  );
}
