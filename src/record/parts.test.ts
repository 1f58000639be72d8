import { describe, expect, it } from "vitest";
import { z } from "zod";
import { partTypes } from "./parts.ts";

/** Every field of a form, however deep. */
function fieldsOf(schema: unknown): string[] {
  if (Array.isArray(schema)) return schema.flatMap(fieldsOf);
  if (typeof schema !== "object" || schema === null) return [];
  const properties: unknown = Reflect.get(schema, "properties");
  const own = typeof properties === "object" && properties !== null ? Object.keys(properties) : [];
  return [...own, ...Object.values(schema).flatMap(fieldsOf)];
}
const formOf = (body: z.ZodType): unknown => z.toJSONSchema(body, { unrepresentable: "any" });

describe("the forms of parts", () => {
  it.each(Object.entries(partTypes))(
    "%s has no field that invites a person's name, address or number",
    (_kind, { body }) => {
      const fields = fieldsOf(formOf(body));
      expect(fields.length).toBeGreaterThan(0);
      // `name` is a root's or a vasoconstrictor's, `authors` a paper's.
      const inviting = fields.filter((field) =>
        /birth(date|day)|address|phone|mail|surname|forename|patientname|insurance|ssn/i.test(field),
      );
      expect(inviting).toEqual([]);
    },
  );

  it.each(Object.entries(partTypes))(
    "%s names itself, and has a migration for each form before today's",
    (kind, type) => {
      expect(type.kind).toBe(kind);
      expect(type.migrations.length).toBe(type.version - 1);
    },
  );

  it.each(Object.entries(partTypes))("%s refuses a field that it does not know", (_kind, { body }) => {
    const parsed = body.safeParse({ colourOfTheDay: "red" });
    const unknown = parsed.error?.issues.some(
      (issue) => issue.code === "unrecognized_keys" || issue.code === "invalid_union",
    );
    expect(unknown).toBe(true);
  });

  it("a finding can't have the tooth itself as its control", () => {
    const { teeth, ...rest } = examination;
    const asControl = teeth.map((tested) => ({ ...tested, role: "control" }));
    expect(faultsOfFindings({ ...rest, teeth: [...teeth, ...asControl] })).toEqual(["teeth.1.tooth"]);
  });

  it("a finding from before the further questions is whole as it stands, and takes each of them", () => {
    expect(faultsOfFindings(examination)).toEqual([]);
    const further = {
      ...examination,
      history: { ...examination.history, nightPain: "yes", coldLingersSeconds: 3600, painLike: ["joint", "nerve"] },
      seen: {
        ...examination.seen,
        swellingAt: ["cheek"],
        swellingOnset: "rapid",
        temperatureC: 38.2,
        exposure: "none",
      },
      onFilm: { ...examination.onFilm, lesionFits: "no", lucencyAtRoots: ["MB", "P"] },
      existing: [{ canal: "MB1", is: "filled" }],
      prior: { events: 20, n: 80, from: "own register, 2024" },
      protocol: { lingeringFromSeconds: 10, newTraumaUntilDays: 90 },
    };
    expect(faultsOfFindings(further)).toEqual([]);
  });

  it("a finding names a canal once, and counts no more diseased teeth than there were", () => {
    const twice = { canal: "MB1", is: "opened" };
    expect(faultsOfFindings({ ...examination, existing: [twice, twice] })).toEqual(["existing.1.canal"]);
    const prior = { events: 81, n: 80, from: "" };
    expect(faultsOfFindings({ ...examination, prior })).toEqual(["prior.events"]);
  });
});

const no = "no";
const examination = {
  takenOn: "2024-03-04",
  history: {
    spontaneousPain: no,
    painToCold: no,
    painToHeat: no,
    relievedByCold: no,
    painOnBiting: no,
    trauma: no,
    recentOnset: no,
  },
  teeth: [
    {
      tooth: "26",
      role: "tooth",
      cold: { reply: "none" },
      heat: { reply: "notDone" },
      electric: "notDone",
      percussion: "none",
      palpation: "none",
      bite: "none",
      mobility: 0,
      probingMm: {},
    },
  ],
  seen: { swelling: "none", sinusTract: "none", caries: "none", crack: "none", restoration: "", fever: no },
  onFilm: {
    ligament: "normal",
    lamina: "intact",
    lucency: "none",
    sclerosis: no,
    resorption: "none",
    apex: "closed",
    calcified: no,
    earlierFilling: "none",
  },
  note: "",
};

/** Where the form of findings objects. */
const faultsOfFindings = (body: unknown): string[] =>
  partTypes.findings.body.safeParse(body).error?.issues.map(({ path }) => path.join(".")) ?? [];
