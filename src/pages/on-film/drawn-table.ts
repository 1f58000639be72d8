import type { LedgerReader } from "../ledger-reader.ts";
import { type Line, says, type Table } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import type { Mark } from "./measures-on-film.ts";

/** The computations that a mark can be asked about. */
export const topicsOfMarks = [
  "curvature",
  "lesion",
  "fragmentOnFilm",
  "fillingEnd",
  "levelOnCanal",
  "wallOnFilm",
  "crownRoot",
] as const;

/** The marks of one film, and its name where several stand in one table. */
interface MarksOfFilm {
  readonly film?: string;
  readonly marks: readonly Mark[];
}

/**
 * What was drawn on films beside courses, each value with its interval; nothing where nothing was.
 * Takes the films with their marks; in brief each drawing has its first value alone.
 */
export function drawnTable(
  films: readonly MarksOfFilm[],
  read: LedgerReader,
  as: "whole" | "brief" = "whole",
): Table[] {
  const named = films.some(({ film }) => film !== undefined);
  const rows = films.flatMap(({ film, marks }) =>
    marks.flatMap((mark) =>
      rowsOf(mark, read)
        .slice(0, as === "brief" ? 1 : undefined)
        .map((row): Line[] => [...(named ? [says(film ?? "")] : []), ...row]),
    ),
  );
  if (rows.length === 0) return [];
  const columns = [
    ...(named ? [{ head: "Film", share: 0.08 }] : []),
    { head: "Drawn", share: 0.3 },
    { head: "Measure", share: 0.3 },
    { head: "Value", share: 0.4 },
  ].map((column) => ({ ...column, align: "left" as const }));
  return [{ kind: "table", caption: "Drawn on the films (95 % intervals)", columns, rows }];
}

/** One value of a drawing: its head, its name in the output, digits, unit. */
type Printed = readonly [head: string, name: string, digits: number, unit: string];

function rowsOf({ id, body }: Mark, read: LedgerReader): Line[][] {
  const row = (topic: string, drawn: string, values: readonly Printed[]): Line[][] =>
    values.flatMap(([head, name, digits, unit], index) =>
      read.number(`${topic} of ${id}`, name, digits) === undefined
        ? []
        : [
            [
              says(index === 0 ? drawn : ""),
              says(head),
              read.withInterval(`${topic} of ${id}`, name, { digits, unit }),
            ],
          ],
    );
  switch (body.shape) {
    case "fragment":
      return [...row("fragmentOnFilm", `Fragment${owned(" in ", body.canal)}`, fragmentValues), ...placeRows(id, read)];
    case "wall":
      return row("wallOnFilm", sentence(`${body.side ?? ""} wall${owned(" of ", body.canal ?? body.root)}`.trim()), [
        ["Thickness", "thicknessMm", 1, "mm"],
      ]);
    case "crownRoot":
      return row("crownRoot", `Crown and root${owned(", ", body.root)}`, [
        [`Ratio at the ${levelWords[body.levelIs]}`, "crownToRoot", 2, ""],
        ["Crown", "crownMm", 1, "mm"],
        ["Root", "rootMm", 1, "mm"],
      ]);
    case "spot":
      return spotRows(id, body, { read, row });
    case "trace":
      return body.kind === "filledCanal"
        ? row("fillingEnd", `Filling of ${body.canal ?? "a canal"}`, fillingValues(id, read))
        : [];
    default:
      return [];
  }
}

const owned = (between: string, owner: string | undefined): string => (owner === undefined ? "" : `${between}${owner}`);

const levelWords = { boneCrest: "bone crest", cementoEnamelJunction: "cemento-enamel junction" } as const;

const fragmentValues: readonly Printed[] = [
  ["Length", "lengthMm", 1, "mm"],
  ["Depth of its top", "topDepthMm", 1, "mm"],
  ["Its tip to the apex", "tipToApexMm", 1, "mm"],
];

/** Short of the apex above 0; the distance alone where its side is not known. */
const fillingValues = (id: string, read: LedgerReader): readonly Printed[] =>
  read.number(`fillingEnd of ${id}`, "shortMm", 1) === undefined
    ? [["From the apex", "distanceMm", 1, "mm"]]
    : [["Short of the apex", "shortMm", 1, "mm"]];

/** Where a fragment lies, in the words of its entry. */
function placeRows(id: string, read: LedgerReader): Line[][] {
  const subject = `fragmentOnFilm of ${id}`;
  const third = read.text(subject, "thirds.top.third");
  const bend = read.text(subject, "bend.lies");
  const line: Line = [
    ...(third === undefined ? [] : [third, { text: " third of the canal" }]),
    ...(third === undefined || bend === undefined ? [] : [{ text: ", " }]),
    ...(bend === undefined ? [] : [bend, { text: " the largest bend" }]),
  ];
  return line.length === 0 ? [] : [[says(""), says("Lies"), line]];
}

interface RowsOfSpot {
  readonly read: LedgerReader;
  readonly row: (topic: string, drawn: string, values: readonly Printed[]) => Line[][];
}

function spotRows(id: string, body: Extract<Mark["body"], { shape: "spot" }>, { read, row }: RowsOfSpot): Line[][] {
  if (body.is === "fillingEnd")
    return row("fillingEnd", `Filling's end${owned(" in ", body.canal)}`, fillingValues(id, read));
  if (body.is !== "level") return [];
  const named = sentence(body.what === "" ? "level" : body.what);
  return row("levelOnCanal", `${named}${owned(" in ", body.canal)}`, [
    ["From the start of the course", "fromStartMm", 1, "mm"],
    ["To the foramen", "toForamenMm", 1, "mm"],
  ]);
}
