import { expect, test } from "vitest";
import { clickSigmaOrigin } from "./click-sigma-words.ts";

test("where the click error came from is told in words", () => {
  const clickSigmaFrom = { exerciseId: "exercise-1", at: "2026-11-29T12:00:00.000Z", n: 118 };
  expect(clickSigmaOrigin({ clickSigmaPx: 0.82, clickSigmaFrom })).toBe(
    "your own, measured on 29 Nov 2026 (118 clicks)",
  );
  expect(clickSigmaOrigin({ clickSigmaPx: 1 })).toBe("assumed 1\u202fpx, not measured yet");
  expect(clickSigmaOrigin({ clickSigmaPx: 1.5 })).toBe("1.50\u202fpx written by hand, not measured");
});
