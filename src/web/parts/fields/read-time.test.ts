import { describe, expect, it } from "vitest";
import { timeOfDay } from "../../../record/values.ts";
import { readTime } from "./time-field.tsx";

describe("a time of the day as it is typed", () => {
  it.each([
    ["14:02", "14:02"],
    ["9:05", "09:05"],
    [" 9.05 ", "09:05"],
    ["0905", "09:05"],
    ["00:00", "00:00"],
    ["23:59", "23:59"],
  ])("%j is one that the record takes", (text, value) => {
    expect(readTime(text)).toEqual({ value });
    expect(timeOfDay.safeParse(value).success).toBe(true);
  });

  it.each(["24:00", "12:60", "9", "2 pm", "12:5"])("%j is none, and says how it is written", (text) => {
    expect(readTime(text)).toEqual({ fault: "write it as 14:02" });
    expect(timeOfDay.safeParse(text).success).toBe(false);
  });

  it("is absent where nothing is typed", () => {
    expect(readTime(" ")).toEqual({});
  });
});
