import { describe, expect, it } from "vitest";
import { pairingPart } from "./pairing.ts";

const faults = (body: unknown) =>
  pairingPart.body.safeParse(body).error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
const films = ["film-1", "film-2", "film-3"];

describe("a canal's films", () => {
  it("takes two to six films, with rows that grow on each", () => {
    const levels = [
      [0.2, 0.25, 0.2],
      [0.6, 0.55, 0.7],
    ];
    const body = { canal: "MB1", films, levels, angleSigmaDeg: 2, sourceToToothMm: 300, toothToDetectorMm: 10 };
    expect(pairingPart.body.parse(body)).toEqual(body);
    expect(pairingPart.body.parse({ canal: "MB1", films: films.slice(1) })).not.toHaveProperty("levels");
  });

  it.each([
    ["a film twice", { films: ["film-1", "film-2", "film-1"] }, "films.2: names a film twice"],
    ["a row of too few films", { levels: [[0.1, 0.2]] }, "levels.0: holds 2 shares for 3 films"],
    [
      "rows that cross",
      {
        levels: [
          [0.2, 0.5, 0.2],
          [0.4, 0.5, 0.4],
        ],
      },
      "levels.1.1: is not beyond the row before it",
    ],
  ])("refuses %s", (_, change, says) => {
    expect(faults({ canal: "MB1", films, ...change })).toEqual([says]);
  });

  it.each([
    { films: ["film-1"] },
    { films: Array.from({ length: 7 }, (_, at) => `film-${at}`) },
    { films, levels: [[0, 0.5, 1.01]] },
    { films, sourceToToothMm: 10 },
    { films, canal: "the wide one" },
  ])("refuses what lies outside its form: %o", (change) => {
    expect(faults({ canal: "MB1", ...change })).toHaveLength(1);
  });
});
