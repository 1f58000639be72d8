import { describe, expect, it } from "vitest";
import { dayInWords, daysBetween, distanceInWords, spanInWords, timeInWords, today } from "./days-in-words.ts";

describe("days in words", () => {
  it("are read as a day, a month and a year", () => {
    expect(dayInWords("2026-03-02")).toBe("2 Mar 2026");
  });

  it("are counted over a leap day and a change of the clock", () => {
    expect(daysBetween("2024-02-28", "2024-03-01")).toBe(2);
    expect(daysBetween("2024-03-30", "2024-04-01")).toBe(2);
    expect(daysBetween("2024-03-05", "2024-02-20")).toBe(-14);
  });

  it("say how far away they are", () => {
    expect(distanceInWords("2026-01-01", "2026-01-01")).toBe("today");
    expect(distanceInWords("2026-01-01", "2026-01-02")).toBe("in 1 day");
    expect(distanceInWords("2026-03-01", "2026-02-14")).toBe("15 days ago");
    expect(distanceInWords("2026-01-01", "2027-01-12")).toBe("in 12 months");
  });

  it.each([
    [60, "60 days"],
    [61, "2 months"],
    [183, "6 months"],
    [729, "24 months"],
    [731, "2 years"],
    [913, "2½ years"],
  ])("%i days are %s", (days, words) => {
    expect(spanInWords(days)).toBe(words);
  });

  it("are those of this place, not of Greenwich", () => {
    expect(today(new Date(2026, 10, 5, 23, 59))).toBe("2026-11-05");
    expect(timeInWords(new Date(2026, 10, 5, 9, 4))).toBe("09:04");
  });
});
