import { type RemovalInput, type RootSide, rootSides } from "../removal-input.ts";

interface Station {
  readonly atMm: number;
  readonly mm: number;
}

/** The dentine of one side along the canal, as far as it is known. */
export interface WallAlong {
  readonly side: RootSide;
  /** Takes mm from the orifice; undefined where nothing of this side is known. */
  readonly mmAt: (atMm: number) => number | undefined;
}

/**
 * The walls between orifice and head: straight lines between the places where they are known, constant beyond them.
 * Gives every side, the furcation's first.
 * @source docs/methods/removal.md C3
 */
export const wallsAlong = ({ walls = [], thinnestAlong = [], fragment }: RemovalInput): WallAlong[] =>
  rootSides.map((side) => {
    const atHead = walls.filter((one) => one.side === side).map(({ mm }) => ({ mm, atMm: fragment.headDepthMm ?? 0 }));
    const known = [...thinnestAlong.filter((one) => one.side === side), ...atHead].toSorted((a, b) => a.atMm - b.atMm);
    return { side, mmAt: (atMm) => between(known, atMm) };
  });

function between(known: readonly Station[], atMm: number): number | undefined {
  const after = known.find((one) => one.atMm >= atMm);
  const before = known.findLast((one) => one.atMm <= atMm);
  if (before === undefined || after === undefined || after.atMm === before.atMm) return (before ?? after)?.mm;
  const share = (atMm - before.atMm) / (after.atMm - before.atMm);
  return before.mm + share * (after.mm - before.mm);
}
