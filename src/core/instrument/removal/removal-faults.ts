import { type Fault, Refusal } from "../../refusal.ts";
import { roundedMm } from "../canal-bending.ts";
import type { RemovalInput } from "../removal-input.ts";
import { platformWidth } from "./platform.ts";

/**
 * Refuses what can't be: every fault with its path.
 * Takes the input and the length of its course, where one is known.
 * @throws Refusal `input.impossible`
 * @source docs/methods/removal.md, What it refuses
 */
export function checkRemoval(input: RemovalInput, courseMm: number | undefined): void {
  const faults = [...lengthFaults(input, courseMm), ...widthFaults(input), ...wallFaults(input), ...twiceFaults(input)];
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot weigh the removal: what is told can't be", {}, faults);
}

function lengthFaults({ fragment, thinnestAlong = [] }: RemovalInput, courseMm: number | undefined): Fault[] {
  if (courseMm === undefined) return [];
  const ends = `ends after ${courseMm.toFixed(2)} mm`;
  const beyond = (path: string, mm: number | undefined, is: string): Fault[] =>
    mm === undefined || mm <= courseMm + roundedMm ? [] : [{ path, says: `${mm} ${is} the course, which ${ends}` }];
  return [
    ...beyond("fragment.headDepthMm", fragment.headDepthMm, "lies beyond"),
    ...beyond("fragment.lengthMm", fragment.lengthMm, "is longer than"),
    ...thinnestAlong.flatMap(({ atMm }, index) => beyond(`thinnestAlong[${index}].atMm`, atMm, "lies beyond")),
  ];
}

function widthFaults({
  fragment,
  canalDiameterMm: canal,
  walls = [],
  clearanceMm,
  offCentreMm,
}: RemovalInput): Fault[] {
  const head = fragment.headDiameterMm;
  const thickest = Math.max(0, ...walls.map(({ mm }) => mm));
  if (canal === undefined) return [];
  const width = head === undefined || clearanceMm === undefined ? 0 : platformWidth(head, clearanceMm);
  const root = canal + 2 * thickest;
  return [
    ...(head !== undefined && head > canal + roundedMm
      ? [{ path: "fragment.headDiameterMm", says: `${head} is wider than the canal that it lies in, ${canal}` }]
      : []),
    ...(thickest > 0 && width > root
      ? [{ path: "clearanceMm", says: `makes a platform of ${width.toFixed(2)} mm in a root of ${root.toFixed(2)} mm` }]
      : []),
    ...(thickest > 0 && (offCentreMm ?? 0) > thickest
      ? [
          {
            path: "offCentreMm",
            says: `${offCentreMm} puts the platform outside the root: no wall is thicker than ${thickest}`,
          },
        ]
      : []),
  ];
}

/** A wall thinner than the canal is rare enough to be a slip: it is asked once, and taken where a person stands by it. */
function wallFaults({ canalDiameterMm: canal, walls = [], thinnestAlong = [], wallsConfirmed }: RemovalInput): Fault[] {
  if (canal === undefined || wallsConfirmed === true) return [];
  const thin = (path: string, { mm }: { mm: number }): Fault[] =>
    mm >= canal
      ? []
      : [{ path, says: `${mm} is thinner than the canal, ${canal}: measure again, or confirm that it is so` }];
  return [
    ...walls.flatMap((wall, index) => thin(`walls[${index}].mm`, wall)),
    ...thinnestAlong.flatMap((wall, index) => thin(`thinnestAlong[${index}].mm`, wall)),
  ];
}

const twiceFaults = ({ walls = [] }: RemovalInput): Fault[] =>
  walls.flatMap(({ side }, index) =>
    walls.findIndex((one) => one.side === side) === index
      ? []
      : [{ path: `walls[${index}].side`, says: `${side} stands there a second time` }],
  );
