import { type Fault, Refusal } from "../../refusal.ts";
import { levelFaults } from "./level-faults.ts";
import type { TwoViewInput, ViewInput } from "./two-view-input.ts";

/** Angles nearer to each other than this are one angle: that is how well an angle is known. */
const leastShiftDeg = 1;
const fewestPoints = 4;

/**
 * Refuses what no course in space can be computed from.
 * @throws Refusal `input.impossible` for one view, equal angles, courses that run against each other, detector millimetres
 * without a geometry, landmarks that are named but not seen, levels that no trace has; `trace.tooFewPoints` for a course under 4 points.
 */
export function checkViews(input: TwoViewInput): void {
  const faults = [...viewFaults(input), ...angleFaults(input), ...geometryFaults(input), ...landmarkFaults(input)];
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot compute the course in space: the views do not allow it", {}, faults);
  const short = input.views.flatMap((view, index): Fault[] => tooShort(view, index));
  if (short.length > 0)
    throw new Refusal(
      "trace.tooFewPoints",
      "Cannot compute the course in space: a trace has fewer than 4 points",
      {},
      short,
    );
  const levels = levelFaults(input);
  if (levels.length > 0)
    throw new Refusal(
      "input.impossible",
      "Cannot compute the course in space: a level is on no common place of the traces",
      {},
      levels,
    );
  const turned = directionFaults(input.views);
  if (turned.length > 0)
    throw new Refusal(
      "input.impossible",
      "Cannot compute the course in space: the traces do not run the same way",
      {},
      turned,
    );
}

function viewFaults({ views }: TwoViewInput): Fault[] {
  if (views.length >= 2) return [];
  return [
    { path: "views", says: `holds ${views.length}; depth needs at least 2 films under different horizontal angles` },
  ];
}

function angleFaults({ views }: TwoViewInput): Fault[] {
  const known = views.flatMap(({ horizontalAngleDeg }) =>
    horizontalAngleDeg === undefined ? [] : [horizontalAngleDeg],
  );
  if (known.length < 2 || Math.max(...known) - Math.min(...known) >= leastShiftDeg) return [];
  return [
    {
      path: "views[1].horizontalAngleDeg",
      says: `${known[1]} is the angle of the first view (${known[0]}) within ${leastShiftDeg} degree: both films show the same; take one with the tube shifted by 20 to 30 degrees`,
    },
  ];
}

function geometryFaults({ units, geometry }: TwoViewInput): Fault[] {
  if (units !== "detectorMm" || geometry?.toothToDetectorMm !== undefined) return [];
  return [
    {
      path: geometry === undefined ? "geometry" : "geometry.toothToDetectorMm",
      says: "is missing: millimetres on the detector need sourceToToothMm and toothToDetectorMm; or give toothPlaneMm",
    },
  ];
}

function landmarkFaults({ views, reference, knownSeparation }: TwoViewInput): Fault[] {
  const named = [
    ...(reference === undefined ? [] : [{ name: reference, path: "reference" }]),
    ...(knownSeparation?.landmarks ?? []).map((name, at) => ({ name, path: `knownSeparation.landmarks[${at}]` })),
  ];
  const unseen = named.flatMap(({ name, path }) =>
    views.flatMap(({ landmarks }, index) =>
      name in landmarks
        ? []
        : [{ path, says: `${JSON.stringify(name)} is not among the landmarks of views[${index}]` }],
    ),
  );
  const [first, second] = knownSeparation?.landmarks ?? [];
  if (first === undefined || first !== second) return unseen;
  return [...unseen, { path: "knownSeparation.landmarks", says: "names one landmark twice; two are needed" }];
}

/** What is wrong with a view of too few different points. */
export function tooShort({ points }: ViewInput, index: number): Fault[] {
  const apart = points.filter(
    ([u, v], at) => at === 0 || u !== points[at - 1]?.[0] || v !== points[at - 1]?.[1],
  ).length;
  if (apart >= fewestPoints) return [];
  return [
    { path: `views[${index}].points`, says: `holds ${apart} different points; at least ${fewestPoints} are needed` },
  ];
}

/** The rise of a course along the film, from its first to its last point. */
const riseOf = ({ points }: ViewInput): number => (points.at(-1)?.[1] ?? 0) - (points[0]?.[1] ?? 0);
/** Courses whose rises differ by more than this share are not of the same stretch of canal. */
const unequal = 0.25;

/** What is wrong with courses that run against each other, across the film, or over different stretches. */
export function directionFaults(views: readonly ViewInput[]): Fault[] {
  const [first, ...others] = views.map(riseOf);
  if (first === undefined) return [];
  if (Math.abs(first) < 1)
    return [
      {
        path: "views[0].points",
        says: `the course rises by ${first.toFixed(1)} mm along the tooth; a canal that runs across the film has no levels to pair`,
      },
    ];
  return others.flatMap((rise, index): Fault[] => {
    const path = `views[${index + 1}].points`;
    if (Math.sign(rise) !== Math.sign(first))
      return [
        {
          path,
          says: "the course runs the other way along the tooth than that of views[0]; put both in order from orifice to foramen",
        },
      ];
    const longer = Math.abs(rise) / Math.abs(first);
    if (longer < 1 + unequal && longer > 1 / (1 + unequal)) return [];
    return [
      {
        path,
        says: `the course rises by ${Math.abs(rise).toFixed(1)} mm where that of views[0] rises by ${Math.abs(first).toFixed(1)} mm; trace the same stretch of canal on both, and calibrate both`,
      },
    ];
  });
}
