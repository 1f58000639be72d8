import { type IrrigationInput, solutionNames } from "../../core/safety/irrigation/irrigation-input.ts";
import { irrigationTopic } from "../../core/safety/irrigation-topic.ts";
import { type Part, type PartOf, partsOf } from "../../record/parts.ts";
import { partsOn } from "../../record/parts-on.ts";
import type { Binding, Question } from "../binding.ts";
import { sheetFacts } from "../difficulty-facts/sheet-facts.ts";
import { type FactTold, factsAsked, factTold } from "../fact-told.ts";
import { irrigationSubject } from "../irrigation-told.ts";
import { flagAt } from "../visit-sums/history-answers.ts";
import { type IrrigationCourse, irrigationCourses } from "../visit-sums/irrigation-courses.ts";

type Visit = PartOf<"visit">;
type Row = Visit["body"]["irrigation"][number];
type Told = FactTold<keyof IrrigationInput>;
type Root = keyof NonNullable<IrrigationInput["root"]>;

/** The irrigants of each visit in their order; canal by canal where rows name canals. */
export const irrigationBinding: Binding = {
  topic: irrigationTopic,
  ask: ({ parts }) =>
    partsOf(parts, "visit").flatMap((visit) =>
      irrigationCourses(visit.body).map((course) => asked({ visit, parts, ...course })),
    ),
};

interface Asked extends IrrigationCourse {
  readonly visit: Visit;
  readonly parts: readonly Part[];
}

function asked({ visit, parts, canal, rows }: Asked): Question {
  return {
    subject: irrigationSubject(visit.id, canal),
    ...factsAsked([
      sequenceOf(visit.id, rows),
      ...settingsOf(visit),
      ...rootOf(partsOn(parts, visit.body.on), canal),
      ...allergyOf(visit, parts),
    ]),
  };
}

const sequenceOf = (visitId: string, rows: IrrigationCourse["rows"]): Told => ({
  field: "sequence",
  value: rows.map(({ row }) => stepOf(row)),
  paths: rows.map(({ index }, at) => ({ input: `sequence[${at}]`, record: `${visitId}/irrigation/${index}` })),
});

function stepOf({ solution, named, percent, volumeMl, minutes, activated, needle }: Row): object {
  return {
    solution: solution === "other" ? { own: ownName(named) } : solution,
    ...(percent === undefined ? {} : { percent }),
    ...{ volumeMl, minutes, activated: activated !== "no" },
    ...(needle === undefined ? {} : { needle }),
  };
}

/** As long as the topic takes it. */
const ownName = (named: string | undefined): string => (named || "a solution without a name").slice(0, 80);

function settingsOf({ id, body: { clinic } }: Visit): Told[] {
  if (clinic?.irrigation === undefined) return [];
  const { protocol, ...needles } = clinic.irrigation;
  const lines = protocol?.map(({ solution, ...line }) => ({ solution: asSolution(solution), ...line }));
  const value = { ...needles, ...(lines === undefined ? {} : { protocol: lines }) };
  const at = `${id}/clinic/irrigation`;
  const paths = Object.keys(value).flatMap((name) =>
    name === "protocol"
      ? (lines ?? []).map((_, index) => ({
          input: `settings.protocol[${index}]`,
          record: `${at}/protocol/${index}`,
        }))
      : [{ input: `settings.${name}`, record: `${at}/${name}` }],
  );
  return [{ field: "settings", value, paths }];
}

const asSolution = (written: string): string | { own: string } =>
  solutionNames.find((name) => name.toLowerCase() === written.toLowerCase()) ?? { own: ownName(written) };

/** What lets irrigants out of the root: as the sheets up to the visit say, and perforations of this canal or of none that is named. */
function rootOf(parts: readonly Part[], canal: string | undefined): Told[] {
  const told = sheetFacts(parts).flatMap(({ field, value, paths }): FactTold<Root>[] => {
    if (field === "openApex") return [{ field, value, paths }];
    return field === "resorption" ? [{ field, value: value !== "none", paths }] : [];
  });
  const perforations = partsOf(parts, "mishap").filter(
    ({ body }) => body.what === "perforation" && (canal === undefined || (body.canal ?? canal) === canal),
  );
  const all = [
    ...told,
    ...factTold(
      "perforation" as const,
      perforations.length > 0 || undefined,
      ...perforations.map(({ id }) => `${id}/what`),
    ),
  ];
  if (all.length === 0) return [];
  const { input, inputPaths } = factsAsked(all);
  const paths = inputPaths.map(({ input: field, record }) => ({ input: `root.${field}`, record }));
  return [{ field: "root", value: input, paths }];
}

function allergyOf(visit: Visit, parts: readonly Part[]): Told[] {
  const answer = flagAt("allergyIodine", visit, parts);
  return answer === undefined ? [] : factTold("iodineAllergy" as const, answer.is, answer.record);
}
