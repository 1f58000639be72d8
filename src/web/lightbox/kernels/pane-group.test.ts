import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FilmPlacement, fitted, panned, toFilm, toScreen, zoomedAt } from "./film-placement.ts";
import { filmPoint, pixelsBetween } from "./film-point.ts";
import {
  type FramedFilm,
  linkedTo,
  movedIn,
  type PaneGroup,
  placementIn,
  unlinked,
  wholeGroup,
  wholeIn,
} from "./pane-group.ts";

const upright = { quarterTurns: 0, mirrored: false } as const;
const framed = (columns: number, rows: number, more: Partial<FramedFilm> = {}): FramedFilm => ({
  film: { columns, rows },
  pane: { width: 600, height: 500 },
  orientation: upright,
  ...more,
});
const scale = (mm: number) => ({ mmPerPx: { column: mm, row: mm } });
const fine = framed(2000, 1500, scale(0.02));
const coarse = framed(800, 900, { ...scale(0.04), pane: { width: 400, height: 700 } });
const withScales = { a: fine, b: coarse };
const withoutScales = { a: framed(2000, 1500), b: framed(800, 900) };
const where = (group: PaneGroup, id: string, panes: Readonly<Record<string, FramedFilm>>): FilmPlacement => {
  const placement = placementIn(group, id, panes);
  if (placement === undefined) throw new Error(`no pane ${id}`);
  return placement;
};
const middle = ({ film }: FramedFilm) => filmPoint((film.columns - 1) / 2, (film.rows - 1) / 2);
const push = (x: number, y: number, of: FramedFilm) => (now: FilmPlacement) => panned(now, of.film, { x, y });

describe("films of linked panes", () => {
  it("are shown whole at first, with scales all at one size", () => {
    const [a, b] = ["a", "b"].map((id) => where(wholeGroup(true), id, withScales));
    // Pixels of the screen for a millimetre.
    expect((a?.zoom ?? 0) / 0.02).toBeCloseTo((b?.zoom ?? 1) / 0.04, 9);
    for (const [id, of] of Object.entries(withScales)) {
      const placement = where(wholeGroup(true), id, withScales);
      expect(placement.zoom).toBeLessThanOrEqual(fitted(of.film, of.pane, upright).zoom + 1e-12);
      expect(pixelsBetween(placement.centre, middle(of))).toBe(0);
    }
  });

  it("without a scale each as large as it goes", () => {
    for (const [id, of] of Object.entries(withoutScales))
      expect(where(wholeGroup(true), id, withoutScales)).toEqual(fitted(of.film, of.pane, upright));
  });

  it("move by the same millimetres", () => {
    const group = movedIn(wholeGroup(true), "a", withScales, push(-90, 40, fine));
    const [a, b] = [where(group, "a", withScales), where(group, "b", withScales)];
    expect((a.centre.column - middle(fine).column) * 0.02).toBeCloseTo(
      (b.centre.column - middle(coarse).column) * 0.04,
      9,
    );
    expect((a.centre.row - middle(fine).row) * 0.02).toBeCloseTo((b.centre.row - middle(coarse).row) * 0.04, 9);
    expect(a.centre.column).toBeGreaterThan(middle(fine).column);
  });

  it("move by the same share of the film where one has no scale", () => {
    const panes = { a: fine, b: framed(800, 900) };
    const group = movedIn(wholeGroup(true), "a", panes, push(-60, -30, fine));
    const [a, b] = [where(group, "a", panes), where(group, "b", panes)];
    expect((a.centre.column - middle(fine).column) / 2000).toBeCloseTo((b.centre.column - 399.5) / 800, 9);
    expect((a.centre.row - middle(fine).row) / 1500).toBeCloseTo((b.centre.row - 449.5) / 900, 9);
  });

  it("zoom together: what lies on the same millimetre stays on it", () => {
    const at = { x: 180, y: 420 };
    const zoom = (now: FilmPlacement) => zoomedAt(now, fine.pane, { at, factor: 1.7 });
    const group = movedIn(wholeGroup(true), "a", withScales, zoom);
    const [a, b] = [where(group, "a", withScales), where(group, "b", withScales)];
    expect(a.zoom / 0.02).toBeCloseTo(b.zoom / 0.04, 9);
    const before = where(wholeGroup(true), "a", withScales);
    expect(pixelsBetween(toFilm(a, fine.pane, at), toFilm(before, fine.pane, at))).toBeLessThan(1e-6);
  });

  it("are pushed the same way on the screen however each is turned", () => {
    const turned = { ...coarse, orientation: { quarterTurns: 1, mirrored: false } };
    const panes = { a: fine, b: turned };
    const before = wholeGroup(true);
    const after = movedIn(before, "a", panes, push(36, -22, fine));
    const middleOnScreen = (group: PaneGroup, id: "a" | "b") =>
      toScreen(where(group, id, panes), panes[id].pane, middle(panes[id]));
    for (const id of ["a", "b"] as const) {
      const [from, to] = [middleOnScreen(before, id), middleOnScreen(after, id)];
      expect([to.x - from.x, to.y - from.y].map((step) => Math.round(step * 1e6) / 1e6)).toEqual([36, -22]);
    }
  });

  it.each([
    ["nothing is known of them", undefined, undefined],
    ["both say which way they run", "distal", "mesial"],
  ] as const)("keep to the same place of the tooth where one is mirrored and %s", (_, first, second) => {
    const mirrored = { ...fine, orientation: { quarterTurns: 0, mirrored: true }, toRight: second };
    const panes = { a: { ...fine, toRight: first }, b: mirrored };
    const group = movedIn(wholeGroup(true), "a", panes, push(-80, 20, fine));
    expect(where(group, "b", panes).centre).toEqual(where(group, "a", panes).centre);
    const back = movedIn(group, "b", panes, push(-80, -20, mirrored));
    expect(pixelsBetween(where(back, "a", panes).centre, middle(fine))).toBeLessThan(1e-9);
  });

  it("keep to the same place of the tooth where one was taken in reversed", () => {
    const panes = { a: { ...fine, toRight: "distal" }, b: { ...fine, toRight: "mesial" } } as const;
    const { centre } = where(movedIn(wholeGroup(true), "a", panes, push(-80, 0, fine)), "b", panes);
    const other = where(movedIn(wholeGroup(true), "a", panes, push(80, 0, fine)), "a", panes);
    expect(pixelsBetween(centre, other.centre)).toBeLessThan(1e-9);
  });

  it("honour unequal scales across and down", () => {
    const panes = { a: fine, b: framed(800, 900, { mmPerPx: { column: 0.03, row: 0.06 } }) };
    const group = movedIn(wholeGroup(true), "a", panes, push(-50, -50, fine));
    const [a, b] = [where(group, "a", panes), where(group, "b", panes)];
    expect((b.centre.column - 399.5) * 0.03).toBeCloseTo((a.centre.column - middle(fine).column) * 0.02, 9);
    expect((b.centre.row - 449.5) * 0.06).toBeCloseTo((a.centre.row - middle(fine).row) * 0.02, 9);
  });

  it("never leave their panes", () => {
    const far = fc.tuple(
      fc.double({ min: -5000, max: 5000, noNaN: true }),
      fc.double({ min: -5000, max: 5000, noNaN: true }),
    );
    fc.assert(
      fc.property(far, ([x, y]) => {
        const { centre } = where(movedIn(wholeGroup(true), "a", withScales, push(x, y, fine)), "b", withScales);
        expect(centre.column >= 0 && centre.column <= 799 && centre.row >= 0 && centre.row <= 899).toBe(true);
      }),
    );
  });

  it("go back to the whole, all at once", () => {
    const moved = movedIn(wholeGroup(true), "a", withScales, push(50, 50, fine));
    expect(wholeIn(moved, "b")).toEqual(wholeGroup(true));
  });

  it("are whole again when their common measure goes", () => {
    const moved = movedIn(wholeGroup(true), "a", withScales, push(50, 50, fine));
    const panes = { a: fine, b: framed(800, 900) };
    expect(where(moved, "b", panes)).toEqual(where(wholeGroup(true), "b", panes));
  });
});

describe("panes by themselves", () => {
  it("move alone", () => {
    const group = movedIn(wholeGroup(false), "a", withScales, push(30, 0, fine));
    expect(where(group, "b", withScales)).toEqual(fitted(coarse.film, coarse.pane, upright));
    expect(where(group, "a", withScales).centre).not.toEqual(middle(fine));
    expect(where(wholeIn(group, "a"), "a", withScales)).toEqual(fitted(fine.film, fine.pane, upright));
  });

  it("are laid out anew after a quarter turn, and kept after a mirroring", () => {
    const group = movedIn(wholeGroup(false), "a", withScales, push(30, 0, fine));
    const held = (orientation: FramedFilm["orientation"]) => ({ a: { ...fine, orientation } });
    const turned = { quarterTurns: 1, mirrored: false };
    expect(where(group, "a", held(turned))).toEqual(fitted(fine.film, fine.pane, turned));
    const mirrored = { quarterTurns: 0, mirrored: true };
    const now = where(group, "a", held(mirrored));
    expect([now.centre, now.orientation]).toEqual([where(group, "a", withScales).centre, mirrored]);
  });

  it("know nothing of a pane that is not there", () => {
    expect(placementIn(wholeGroup(true), "c", withScales)).toBeUndefined();
    expect(movedIn(wholeGroup(true), "c", withScales, push(1, 1, fine))).toEqual(wholeGroup(true));
  });
});

describe("linking", () => {
  const apart = [
    { id: "a", of: fine, by: [140, -35] },
    { id: "b", of: coarse, by: [-20, 60] },
  ] as const;
  const moved = apart.reduce<PaneGroup>(
    (group, { id, of, by: [x, y] }) => movedIn(group, id, withScales, push(x, y, of)),
    wholeGroup(false),
  );

  it("keeps what each pane has in its middle, at one size", () => {
    const group = linkedTo(moved, "a", withScales);
    for (const id of ["a", "b"])
      expect(pixelsBetween(where(group, id, withScales).centre, where(moved, id, withScales).centre)).toBeLessThan(
        1e-9,
      );
    expect(where(group, "a", withScales).zoom).toBeCloseTo(where(moved, "a", withScales).zoom, 9);
    expect(where(group, "b", withScales).zoom / 0.04).toBeCloseTo(where(group, "a", withScales).zoom / 0.02, 9);
  });

  it("lets all move together from there", () => {
    const group = linkedTo(moved, "a", withScales);
    const after = movedIn(group, "b", withScales, push(12, 7, coarse));
    for (const { id, of } of apart) {
      const [from, to] = [where(group, id, withScales).centre, where(after, id, withScales).centre];
      const mm = (to.column - from.column) * (of.mmPerPx?.column ?? 0);
      expect(mm).toBeCloseTo(-12 / (where(group, "b", withScales).zoom / 0.04), 9);
    }
  });

  it("and unlinking moves nothing", () => {
    const group = movedIn(linkedTo(moved, "b", withScales), "a", withScales, push(5, 5, fine));
    const free = unlinked(group, withScales);
    expect(free.linked).toBe(false);
    for (const id of ["a", "b"]) expect(where(free, id, withScales)).toEqual(where(group, id, withScales));
  });

  it("twice is once", () => {
    const group = linkedTo(moved, "a", withScales);
    expect(linkedTo(group, "b", withScales)).toEqual(group);
  });
});
