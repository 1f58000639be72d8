import { expect, it } from "vitest";
import { fileItem, instrumentItem } from "../../../record/cabinet/cabinet-for-tests.ts";
import { listedInstruments } from "./listed-instruments.ts";

it("instruments stand by how they are moved, thin ones first; a movement that none has is left out", () => {
  const items = [
    instrumentItem("wide", { size: 40 }),
    instrumentItem("steep", { size: 25, taper: 0.06 }),
    instrumentItem("flat", { size: 25, taper: 0.04 }),
    fileItem("f-1", "wide"),
    instrumentItem("long", { movement: "hand", size: 10, lengthMm: 31 }),
    instrumentItem("short", { movement: "hand", size: 10, lengthMm: 21 }),
  ];
  const listed = listedInstruments(items).map(({ movement, instruments }) => [
    movement,
    instruments.map(({ id }) => id),
  ]);
  expect(listed).toEqual([
    ["hand", ["short", "long"]],
    ["continuous", ["flat", "steep", "wide"]],
  ]);
});
