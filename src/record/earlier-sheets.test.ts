import { describe, expect, it } from "vitest";
import { partId } from "../core/ids.ts";
import { earlierSheets, earlierValue, sheetsUpTo } from "./earlier-sheets.ts";
import { type BodyOf, type Part, type PartOf, partTypes } from "./parts.ts";
import { testsNotDone } from "./words/test-words.ts";

type Tested = BodyOf<"findings">["teeth"][number];

const notDone: Tested = {
  ...{ tooth: "26", role: "tooth", cold: { reply: "notDone" }, heat: { reply: "notDone" }, electric: "notDone" },
  ...{ percussion: "notDone", palpation: "notDone", bite: "notDone", mobility: "notDone", probingMm: {} },
};
const sheetOf = (id: string, takenOn: string, ...teeth: Partial<Tested>[]): PartOf<"findings"> => ({
  ...{ id: partId(id), kind: "findings", revision: 1 },
  body: partTypes.findings.body.parse({
    takenOn,
    history: {
      ...{ spontaneousPain: "notAsked", painToCold: "notAsked", painToHeat: "notAsked", relievedByCold: "notAsked" },
      ...{ painOnBiting: "notAsked", trauma: "notAsked", recentOnset: "notAsked" },
    },
    teeth: (teeth.length === 0 ? [{}] : teeth).map((one) => ({ ...notDone, ...one })),
    seen: {
      ...{ swelling: "notDone", sinusTract: "notDone", caries: "notDone", crack: "notDone" },
      ...{ restoration: "", fever: "notAsked" },
    },
    onFilm: {
      ...{ ligament: "notDone", lamina: "notDone", lucency: "notDone", sclerosis: "notAsked" },
      ...{ resorption: "notDone", apex: "notDone", calcified: "notAsked", earlierFilling: "notDone" },
    },
    note: "",
  }),
});

describe("the sheets before a sheet", () => {
  const first = sheetOf("findings-a", "2026-01-10");
  const second = sheetOf("findings-b", "2026-03-01");
  const third = sheetOf("findings-c", "2026-03-01");
  const later = sheetOf("findings-d", "2026-06-01");
  const parts: readonly Part[] = [later, second, first, third];
  const idsBefore = (sheet: PartOf<"findings">) => earlierSheets(parts, sheet).map(({ id }) => id);

  it("are those of earlier days, the latest first", () => {
    expect(idsBefore(later)).toEqual(["findings-c", "findings-b", "findings-a"]);
    expect(idsBefore(first)).toEqual([]);
  });

  it("hold of the same day only those that stood in the record before", () => {
    expect(idsBefore(third)).toEqual(["findings-b", "findings-a"]);
    expect(idsBefore(second)).toEqual(["findings-a"]);
  });
});

describe("the sheets up to a day", () => {
  const parts: readonly Part[] = [
    sheetOf("findings-a", "2026-03-01"),
    sheetOf("findings-b", "2026-03-01"),
    sheetOf("findings-c", "2026-01-10"),
  ];

  it("hold that day, the latest first, of one day the later in the record first", () => {
    expect(sheetsUpTo(parts, "2026-03-01").map(({ id }) => id)).toEqual(["findings-b", "findings-a", "findings-c"]);
    expect(sheetsUpTo(parts, "2026-02-28").map(({ id }) => id)).toEqual(["findings-c"]);
    expect(sheetsUpTo(parts, "2026-01-09")).toEqual([]);
  });
});

describe("a value of an earlier sheet", () => {
  const then = sheetOf("findings-a", "2026-01-10", {
    cold: { reply: "heightened", lingersSeconds: 12 },
    mobility: 0,
  }).body;

  it("is told in words, empty where the test or the tooth was not tested", () => {
    expect(earlierValue(then, then, "26", "cold")).toEqual({ says: "heightened, 12 s", changed: false });
    expect(earlierValue(then, then, "26", "mobility").says).toBe("0");
    expect(earlierValue(then, then, "26", "heat").says).toBe("");
    expect(earlierValue(then, then, "27", "cold").says).toBe("");
  });

  it("is changed only where both days have an answer and these differ", () => {
    const now = sheetOf("findings-b", "2026-03-01", { cold: { reply: "none" } }).body;
    expect(earlierValue(then, now, "26", "cold").changed).toBe(true);
    expect(earlierValue(then, now, "26", "mobility").changed).toBe(false);
    expect(earlierValue(now, then, "26", "mobility").changed).toBe(false);
  });

  it("says every kind of test", () => {
    const { body } = sheetOf("findings-c", "2026-03-01", {
      ...{ heat: { reply: "normal" }, electric: 34, percussion: "painful", palpation: "slight", bite: "none" },
      probingMm: { mesiobuccal: 3, buccal: 7, lingual: 2 },
    });
    const says = (test: Parameters<typeof earlierValue>[3]) => earlierValue(body, body, "26", test).says;
    expect(says("heat")).toBe("normal");
    expect(says("electric")).toBe("34");
    expect(says("percussion")).toBe("painful");
    expect(says("palpation")).toBe("slight");
    expect(says("bite")).toBe("none");
    expect(says("probingMm")).toBe("3 7 – / – 2 –");
  });
});

describe("what a sheet leaves out", () => {
  it("is counted test by test over all its teeth", () => {
    expect(testsNotDone([notDone])).toBe(8);
    const some: Tested = {
      ...notDone,
      cold: { reply: "none" },
      electric: "none",
      mobility: 0,
      probingMm: { buccal: 2 },
    };
    expect(testsNotDone([some, notDone])).toBe(12);
  });
});
