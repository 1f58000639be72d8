import type { DifficultyInput } from "./difficulty-input.ts";
import type { DifficultyOutput } from "./difficulty-output.ts";
import { type DifficultyRow, difficultyTable } from "./difficulty-table.ts";
import type { RecordedFact } from "./recorded-facts.ts";

type Asked = DifficultyOutput["asked"][number];

/** What is asked of each canal, and which facts answer it. */
const ofCanals = ["deflection", "radius", "doubleBend", "length"] as const;

/** What nobody recorded, and would matter: of the tooth, and of each canal that is known by name. */
export function askedFacts(input: DifficultyInput, recorded: readonly RecordedFact[]): Asked[] {
  return difficultyTable.flatMap((row) => [...missingOf(row, input, recorded), ...secondFilms(row, recorded)]);
}

function missingOf(row: DifficultyRow, input: DifficultyInput, recorded: readonly RecordedFact[]): Asked[] {
  const { id, group, ask } = row;
  if (ask === undefined || isAnsweredElsewhere(id, input)) return [];
  const answered = (canal?: string) =>
    recorded.some((one) => one.id === id && (canal === undefined || one.canal === canal));
  const canals = input.canals ?? [];
  if (!ofCanals.some((one) => one === id) || canals.length === 0) return answered() ? [] : [{ id, group, says: ask }];
  return canals.flatMap(({ name }) => (answered(name) ? [] : [{ id, group, canal: name, says: `${ask}: ${name}` }]));
}

/** What earlier treatment leaves behind is asked only where there may have been one. */
const ofEarlierTreatment = ["alteredCourse", "fragment", "perforation"];

function isAnsweredElsewhere(id: string, { earlierFilling, canals = [] }: DifficultyInput): boolean {
  if (ofEarlierTreatment.includes(id)) return earlierFilling?.present === false;
  if (id === "fillingShort")
    return earlierFilling?.present !== true || earlierFilling.endMm !== undefined || earlierFilling.beyond === true;
  // A canal that is said to be narrowed, or not, answers for the tooth.
  return id === "calcified" && canals.some(({ narrowed }) => narrowed !== undefined);
}

/** A bend that one film shows may be larger: a second film tells. */
function secondFilms({ id, group }: DifficultyRow, recorded: readonly RecordedFact[]): Asked[] {
  if (id !== "deflection") return [];
  return recorded.flatMap((one): Asked[] =>
    one.id === id && one.fromOneFilm === true && one.canal !== undefined
      ? [
          {
            id,
            group,
            canal: one.canal,
            says: `a second film at another angle, read together with the first: the bend of ${one.canal} is known from one alone`,
          },
        ]
      : [],
  );
}
