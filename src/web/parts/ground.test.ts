import { expect, test } from "vitest";
import { groundOf } from "./ground.ts";

test.each([
  ["/case/demo-a/light-box", "dark"],
  ["/case/demo-a/light-box/film-1", "dark"],
  ["/calibration/clicks/exercise-1a/mark", "dark"],
  ["/calibration/clicks/exercise-1a", "paper"],
  ["/calibration", "paper"],
  ["/case/demo-a", "paper"],
  ["/case/demo-a/light-boxes", "paper"],
  ["/", "paper"],
])("%s is drawn on %s", (place, ground) => {
  expect(groundOf(place)).toBe(ground);
});
