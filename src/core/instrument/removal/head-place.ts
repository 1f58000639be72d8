import { type CanalBending, curvatureAt } from "../canal-bending.ts";
import type { RemovalInput } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";

type Place = RemovalOutput["place"];

/**
 * In which third the head lies and where to the bend: as given, else as the course to the foramen says.
 * Takes the input and how its canal bends; undefined where no course is known.
 * @source docs/methods/removal.md C7
 */
export function headPlace(input: RemovalInput, bending: CanalBending | undefined): Place {
  const { fragment, courseEnds = "foramen" } = input;
  const depth = courseEnds === "foramen" ? fragment.headDepthMm : undefined;
  const known = bending !== undefined && depth !== undefined;
  const third = input.third ?? (known ? thirdOf(depth / bending.lengthMm) : undefined);
  const bend = input.bend ?? (known ? bendOf(bending, depth) : undefined);
  return {
    ...(third === undefined ? {} : { third }),
    ...(bend === undefined ? {} : { bend }),
    readFromCourse: [
      ...(input.third === undefined && known ? (["third"] as const) : []),
      ...(input.bend === undefined && known ? (["bend"] as const) : []),
    ],
  };
}

const thirdOf = (share: number): NonNullable<Place["third"]> => {
  if (share < 1 / 3) return "coronal";
  return share < 2 / 3 ? "middle" : "apical";
};

/** A course that turns by less is straight here, degrees. */
const straightDeg = 5;
/** Shares of the whole turn before and after which the bend has not begun or is over. */
const [begun, over] = [0.05, 0.95];
const steps = 400;

function bendOf({ knots, lengthMm, turnDeg }: CanalBending, depthMm: number): NonNullable<Place["bend"]> {
  if (turnDeg < straightDeg) return "none";
  const turned = (toMm: number): number =>
    Array.from({ length: steps }, (_, index) => curvatureAt(knots, ((index + 0.5) * toMm) / steps)).reduce(
      (sum, perMm) => sum + (perMm * toMm) / steps,
      0,
    );
  const share = turned(depthMm) / turned(lengthMm);
  if (share < begun) return "before";
  return share > over ? "beyond" : "in";
}
