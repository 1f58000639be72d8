import { partsOf, thePart } from "../../record/parts.ts";
import { purposeWords } from "../../record/words/later-words.ts";
import type { CaseSource } from "../case-source.ts";
import { ledgerReader } from "../ledger-reader.ts";
import { drawnTable } from "../on-film/drawn-table.ts";
import { type Line, type Page, says, type Table } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { filmBlock, filmWords, lesionLines, marksOf, measured } from "./films.ts";

/** All films side by side, and every course that was measured on them in one table. */
export function filmGallery(source: CaseSource): Page[] {
  const first = thePart(source.parts, "case")?.body.presentedOn ?? "";
  const read = ledgerReader(source.ledger);
  const films = partsOf(source.parts, "film").sort((a, b) => (a.body.takenOn < b.body.takenOn ? -1 : 1));
  if (films.length === 0) return [];
  const named = films.map((film, index) => ({ film, name: `${index + 1}`, marks: marksOf(source.parts, film.id) }));
  const pictures = named.map(({ film, name, marks }) => {
    const words = `${name}. ${sentence(purposeWords[film.body.purpose])}, ${filmWords(film.body, source.parts)}`;
    const said = film.body.caption === "" ? words : `${words}. ${film.body.caption}`;
    const lesions = lesionLines(marks, read).flatMap((line): Line => [{ text: ". " }, ...line]);
    return { ...filmBlock(film, marks, read), caption: [{ text: said }, ...lesions] };
  });
  const rows = named.flatMap(({ name, marks }) =>
    marks
      .filter((mark) => read.entry(`curvature of ${mark.id}`)?.output !== undefined)
      .map((mark): Line[] => [
        says(name),
        says(mark.body.shape === "trace" ? (mark.body.canal ?? "course") : ""),
        ...measured.map(([, path, digits, unit]) =>
          read.withInterval(`curvature of ${mark.id}`, path, { digits, unit }),
        ),
      ]),
  );
  const tables: Table[] = rows.length === 0 ? [] : [{ ...tableForm, rows }];
  const drawn = drawnTable(
    named.map(({ name, marks }) => ({ film: name, marks })),
    read,
    "brief",
  );
  return [{ title: "Films", on: first, blocks: [...pictures, ...tables, ...drawn], notes: [] }];
}

const tableForm: Omit<Table, "rows"> = {
  kind: "table",
  caption: "Measured along the traced courses (95 % intervals)",
  columns: [
    { head: "Film", align: "left", share: 0.08 },
    { head: "Canal", align: "left", share: 0.12 },
    ...measured.map(([head]) => ({ head, align: "left" as const, share: 0.2 })),
  ],
};
