import { expect, it } from "vitest";
import { cabinetBodies } from "../../../../test/samples/cabinet.ts";
import type { CabinetItem, CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { isPast, stockChoices, templatesNaming } from "./stock-state.ts";

const bleach: CabinetItemOf<"stock"> = { id: "bleach", kind: "stock", revision: 1, body: cabinetBodies.stock };
const first: CabinetItem = { id: "first", kind: "template", revision: 1, body: cabinetBodies.template };

it("a package is past its day from the day after on; one without a day never", () => {
  const until = { ...bleach, body: { ...bleach.body, expires: "2026-05-31" } };
  expect(["2026-05-30", "2026-05-31", "2026-06-01"].map((on) => isPast(until, on))).toEqual([false, false, true]);
  expect(isPast(bleach, "2099-01-01")).toBe(false);
});

it("materials are offered by name, those that are named already left out", () => {
  expect(stockChoices([bleach, first])).toEqual({ bleach: "Bleach" });
  expect(stockChoices([bleach, first], ["bleach"])).toEqual({});
});

it("a material knows which templates name it", () => {
  expect(templatesNaming([bleach, first], "bleach")).toEqual(["First visit"]);
  expect(templatesNaming([bleach, first], "other")).toEqual([]);
});
