import { describe, expect, it } from "vitest";
import { entry, film, part, trace } from "./case-for-tests.ts";
import { canalToShow, filmsBeside, filmsTracing, tracedCanals } from "./traced-films.ts";

const [straight, angled, steep] = [
  film("film-1"),
  film("film-2", { horizontalAngleDeg: 25, takenOn: "2025-09-03" }),
  film("film-3", { horizontalAngleDeg: -30, takenOn: "2025-09-04" }),
];
const parts = [angled, straight, steep, trace("t1", "film-1"), trace("t2", "film-2"), trace("t3", "film-3")];
const ids = (found: ReturnType<typeof filmsBeside>) => found.map((one) => `${one.film.id} ${one.trace.id}`);

describe("the films of a canal", () => {
  it("are those that trace it, by day, each with its last trace", () => {
    const found = filmsTracing([...parts, trace("t4", "film-1"), trace("other", "film-1", "MB")], "DL");
    expect(ids(found)).toEqual(["film-1 t4", "film-2 t2", "film-3 t3"]);
    expect(filmsTracing(parts, "P")).toEqual([]);
  });

  it("stand side by side as a person chose them", () => {
    const pairing = part("pairing", "pairing-1", { canal: "DL", films: ["film-3", "film-1"] });
    expect(ids(filmsBeside([...parts, pairing], [], "DL"))).toEqual(["film-3 t3", "film-1 t1"]);
  });

  it("stand as the ledger's entry names them, with the traces that it names", () => {
    const inputPaths = [
      { input: "views[0].points", record: "t1/points" },
      { input: "views[1].points", record: "t2/points" },
    ];
    const ledger = [entry("DL film-1 film-2", { output: { side: "buccal" }, inputPaths })];
    expect(ids(filmsBeside([...parts, trace("t9", "film-2")], ledger, "DL"))).toEqual(["film-1 t1", "film-2 t2"]);
  });

  it("are else the straightest and the one farthest from straight; or the one there is", () => {
    expect(ids(filmsBeside(parts, [], "DL"))).toEqual(["film-1 t1", "film-3 t3"]);
    expect(ids(filmsBeside([straight, trace("t1", "film-1")], [], "DL"))).toEqual(["film-1 t1"]);
    const gone = part("pairing", "pairing-1", { canal: "DL", films: ["film-7", "film-8"] });
    expect(ids(filmsBeside([...parts, gone], [], "DL"))).toEqual(["film-1 t1", "film-3 t3"]);
  });
});

describe("the canals to choose from", () => {
  const more = [...parts, trace("m1", "film-1", "MB"), trace("p1", "film-1", "P"), trace("p2", "film-2", "P")];
  it("stand in the order in which they were traced", () => {
    expect(tracedCanals(more)).toEqual(["DL", "MB", "P"]);
  });

  it("begin with the one of which most is hidden, else with the one on most films", () => {
    expect(canalToShow(more, [entry("MB film-1 film-2", { output: { hiddenDeg: 20 } })])).toBe("MB");
    expect(canalToShow(more, [])).toBe("DL");
    expect(canalToShow([], [])).toBeUndefined();
  });
});
