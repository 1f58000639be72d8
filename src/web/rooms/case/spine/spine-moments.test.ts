import { describe, expect, it } from "vitest";
import type { Part } from "../../../../record/parts.ts";
import { newBodies } from "../new-bodies.ts";
import { spineMoments } from "./spine-moments.ts";

const part = (id: string, kind: string, body: unknown): Part => ({ id, kind, revision: 1, body }) as Part;
const about = part("case-1", "case", { presentedOn: "2024-02-20", treatment: "retreatment" });
const visit = (id: string, on: string, more: object = {}) =>
  part(id, "visit", { ...newBodies.visit(on, {}), aim: "shape", minutes: 90, ...more });
const film = (id: string, takenOn: string, more: object = {}) =>
  part(id, "film", { takenOn, purpose: "diagnostic", caption: "", ...more });
const titles = (parts: readonly Part[], dueOn: string | null = null, today = "2026-01-01") =>
  spineMoments(parts, dueOn, today).map(({ title }) => title);

describe("the spine", () => {
  it("is in order by day, and within a day in the order of the work", () => {
    const parts = [
      part("recall-1", "recall", newBodies.recall("2024-09-20")),
      visit("visit-b", "2024-03-19"),
      part("plan-1", "plan", newBodies.plan("2024-02-20")),
      part("mishap-1", "mishap", newBodies.mishap("2024-03-05")),
      visit("visit-a", "2024-03-05"),
      part("diagnosis-1", "diagnosis", newBodies.diagnosis("2024-02-20")),
      about,
    ];
    expect(titles(parts)).toEqual([
      ...["Presenting", "Diagnosis", "Plan", "Visit 1", "Mishap", "Visit 2"],
      "Recall, 6 months",
    ]);
  });

  it("says how far into the case each moment lies, and what it holds", () => {
    const [, first] = spineMoments([about, visit("visit-a", "2024-03-05")], null, "2026-01-01");
    expect(first).toMatchObject({ when: "day 14", line: "90 min · shape", shape: "done" });
  });

  it("gives mishaps a shape of their own", () => {
    const moments = spineMoments(
      [about, part("mishap-1", "mishap", newBodies.mishap("2024-03-05"))],
      null,
      "2026-01-01",
    );
    expect(moments[1]).toMatchObject({ shape: "mishap", title: "Mishap" });
  });

  it("puts a film to the visit that it names, else to the fittest moment of its day, else on a moment of its own", () => {
    const parts = [
      about,
      part("findings-1", "findings", newBodies.findings("2024-02-20", "26")),
      visit("visit-a", "2024-03-05", { films: ["film-listed"] }),
      visit("visit-b", "2024-03-05"),
      film("film-named", "2024-03-06", { visit: "visit-b" }),
      film("film-listed", "2024-03-07"),
      film("film-of-day", "2024-02-20"),
      film("film-alone", "2025-05-05"),
    ];
    const films = Object.fromEntries(
      spineMoments(parts, null, "2026-01-01").map(({ id, films: own }) => [id, own.map((one) => one.id)]),
    );
    expect(films).toEqual({
      ...{ "case-1": [], "findings-1": ["film-of-day"], "visit-a": ["film-listed"], "visit-b": ["film-named"] },
      "films-2025-05-05": ["film-alone"],
    });
  });

  it("shows what is due, and says when it is late", () => {
    const handed = [about, part("handback-1", "handback", newBodies.handback("2024-03-19"))];
    const due = (today: string) => spineMoments(handed, "2025-03-19", today).at(-1);
    expect(due("2025-02-06")).toMatchObject({ id: "due", title: "Recall due", line: "in 41 days", shape: "due" });
    expect(due("2025-03-29")?.line).toBe("overdue: it was 10 days ago");
  });

  it("shows nothing due once something stands on or after the day", () => {
    const parts = [about, part("recall-1", "recall", newBodies.recall("2025-03-20"))];
    expect(titles(parts, "2025-03-19")).not.toContain("Recall due");
    expect(titles([about], "2025-03-19")).toContain("Visit due");
  });
});
