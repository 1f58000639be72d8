import { z } from "zod";
import type { DifficultyInput } from "../../core/diagnosis/difficulty/difficulty-input.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type BodyOf, type PartOf, partsOf } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { marksOn } from "../marks-on.ts";

type Mishap = PartOf<"mishap">;

/** What earlier hands, or these, have left in the tooth. That no mishap is recorded does not say that there is none. */
export function treatmentFacts(context: BindingContext): FactTold<keyof DifficultyInput>[] {
  const mishaps = partsOf(context.parts, "mishap");
  const perforations = mishaps.filter(({ body }) => body.what === "perforation");
  return [
    ...listTold("fragments", [...fragmentsOf(mishaps), ...drawnFragments(mishaps, context)]),
    ...listTold("alteredCourses", mishaps.flatMap(alteredBy)),
    ...factTold(
      "perforation",
      perforations.length === 0 ? undefined : true,
      ...perforations.map(({ id }) => `${id}/what`),
    ),
  ];
}

interface Entry {
  readonly value: object;
  readonly records: readonly string[];
}

function listTold(field: "fragments" | "alteredCourses", entries: readonly Entry[]): FactTold<keyof DifficultyInput>[] {
  if (entries.length === 0) return [];
  const paths = entries.flatMap(({ records }, index) =>
    records.map((record): InputPath => ({ input: `${field}[${index}]`, record })),
  );
  return [{ field, value: entries.map(({ value }) => value), paths }];
}

/** One that was removed is gone; one that was passed by still lies there. */
const fragmentsOf = (mishaps: readonly Mishap[]): Entry[] =>
  mishaps
    .filter(({ body }) => body.what === "separatedInstrument" && body.handled !== "removed")
    .map(({ id, body }) => ({
      value: {
        ...(body.canal === undefined ? {} : { canal: body.canal }),
        ...(body.third === "notRecorded" ? {} : { third: body.third }),
        ...beyondBend(body.bend),
      },
      records: [`${id}/what`, `${id}/canal`, `${id}/third`, `${id}/bend`],
    }));

function beyondBend(bend: BodyOf<"mishap">["bend"]): object {
  if (bend === "notRecorded") return {};
  return { beyondBend: bend === "in" || bend === "beyond" };
}

const measured = z.looseObject({
  thirds: z.looseObject({ tip: z.looseObject({ third: z.enum(["coronal", "middle", "apical"]) }) }).optional(),
  bend: z.looseObject({ lies: z.enum(["before", "in", "beyond"]) }).optional(),
});

/** A piece that is drawn on a film, in a canal of which no mishap tells: once a canal, by the last drawing. */
function drawnFragments(mishaps: readonly Mishap[], { parts, earlier }: BindingContext): Entry[] {
  const told = mishaps.flatMap(({ body }) => (body.what === "separatedInstrument" ? [body.canal] : []));
  const drawn = partsOf(parts, "film").flatMap(({ id }) => marksOn(parts, id, "fragment"));
  const byCanal = new Map(drawn.map((mark) => [mark.body.canal, mark]));
  return [...byCanal.values()].flatMap(({ id, body: { canal } }): Entry[] => {
    if (told.includes(canal) || (told.length > 0 && canal === undefined)) return [];
    const found = earlier(`fragmentOnFilm of ${id}`);
    const { thirds, bend } = measured.safeParse(found?.output).data ?? {};
    return [
      {
        value: {
          ...(canal === undefined ? {} : { canal }),
          ...(thirds === undefined ? {} : { third: thirds.tip.third }),
          ...(bend === undefined ? {} : beyondBend(bend.lies)),
        },
        records: [`${id}/points`, ...(found === undefined ? [] : [`ledger/${found.entryId}/thirds.tip`])],
      },
    ];
  });
}

const alterations = ["ledge", "block", "transportation"] as const;

/** A ledge that was passed by, or a block that was opened, has still changed the way. */
function alteredBy({ id, body }: Mishap): Entry[] {
  const is = alterations.find((one) => one === body.what);
  if (is === undefined) return [];
  const { canal } = body;
  return [{ value: { is, ...(canal === undefined ? {} : { canal }) }, records: [`${id}/what`, `${id}/canal`] }];
}
