import { describe, expect, it, vi } from "vitest";
import { filmPoint } from "../../../lightbox/kernels/film-point.ts";
import { keyWhileMarking } from "./keys-while-marking.ts";
import type { MarkingFilm } from "./use-marking-film.ts";

const size = { columns: 440, rows: 680 };

/** A film in the middle of a pane at twice its size, mirrored or not, with a crosshair or without. */
function filmWith(crosshair: readonly [number, number] | undefined, mirrored = false) {
  const placing = {
    placement: { zoom: 2, centre: filmPoint(200, 300), orientation: { quarterTurns: 0, mirrored } },
    pane: { width: 800, height: 600 },
    ...{ matrix: [2, 0, 0, 2, 0, 0], push: vi.fn(), zoom: vi.fn(), fit: vi.fn() },
  };
  const setCrosshair = vi.fn();
  const at = crosshair && filmPoint(...crosshair);
  const film = { pixels: { is: "open" }, placing, crosshair: at, setCrosshair } as unknown as MarkingFilm;
  return { film, placing, setCrosshair };
}
const press = (key: string, held: object = {}) => ({ key, shiftKey: false, altKey: false, ...held });

describe("keys while marking", () => {
  it("bring a crosshair into the middle of what is seen, and mark there only when it is seen", () => {
    const mark = vi.fn();
    const hidden = filmWith(undefined);
    expect(keyWhileMarking(hidden.film, size, press("Enter"), mark)).toBe(true);
    expect(hidden.setCrosshair).toHaveBeenCalledWith(filmPoint(200, 300));
    expect(mark).not.toHaveBeenCalled();
    const { film } = filmWith([12.25, 40]);
    keyWhileMarking(film, size, press("Enter"), mark);
    expect(mark).toHaveBeenCalledExactlyOnceWith(filmPoint(12.25, 40), "keyboard");
  });

  it("mark once, however long Enter is held", () => {
    const mark = vi.fn();
    const { film } = filmWith([200, 300]);
    expect(keyWhileMarking(film, size, press("Enter", { repeat: true }), mark)).toBe(true);
    expect(mark).not.toHaveBeenCalled();
  });

  it.each([
    ["ArrowRight", {}, false, [201, 300]],
    ["ArrowRight", {}, true, [199, 300]],
    ["ArrowDown", { shiftKey: true }, true, [200, 310]],
    ["ArrowLeft", { altKey: true }, false, [199.75, 300]],
  ] as const)(
    "%s with %o (mirrored: %s) moves the crosshair the way it points, to %o",
    (key, held, mirrored, [column, row]) => {
      const { film, setCrosshair, placing } = filmWith([200, 300], mirrored);
      expect(keyWhileMarking(film, size, press(key, held), vi.fn())).toBe(true);
      expect(setCrosshair).toHaveBeenCalledWith(filmPoint(column, row));
      expect(placing.push).not.toHaveBeenCalled();
    },
  );

  it("push the film along when the crosshair would leave the pane", () => {
    const { film, placing } = filmWith([390, 300]);
    keyWhileMarking(film, size, press("ArrowRight"), vi.fn());
    // 391 is 382 px right of the middle of the pane, 6 px too near to its edge of 24.
    expect(placing.push).toHaveBeenCalledWith({ x: -6, y: 0 });
  });

  it("change the size, put the crosshair away, and leave all other keys alone", () => {
    const { film, placing, setCrosshair } = filmWith([200, 300]);
    for (const key of ["+", "-", "0", "Escape"]) expect(keyWhileMarking(film, size, press(key), vi.fn())).toBe(true);
    expect(placing.zoom.mock.calls).toEqual([[1.25], [0.8]]);
    expect(placing.fit).toHaveBeenCalledOnce();
    expect(setCrosshair).toHaveBeenCalledWith(undefined);
    for (const other of [
      press("w"),
      press("Backspace"),
      press("Enter", { ctrlKey: true }),
      press("+", { metaKey: true }),
    ])
      expect(keyWhileMarking(film, size, other, vi.fn())).toBe(false);
    expect(keyWhileMarking(filmWith(undefined).film, size, press("Escape"), vi.fn())).toBe(false);
  });

  it("do nothing while the film is not open", () => {
    const { film } = filmWith([200, 300]);
    const mark = vi.fn();
    expect(keyWhileMarking({ ...film, pixels: { is: "loading" } }, size, press("Enter"), mark)).toBe(false);
    expect(mark).not.toHaveBeenCalled();
  });
});
