import type { CaseFile } from "../../../src/record/case-file.ts";
import { caseA } from "./case-a/case-a.ts";
import { caseB } from "./case-b/case-b.ts";
import { caseC } from "./case-c/case-c.ts";
import { type FilmOnList, filmsOnList } from "./film-list.ts";
import { logbook } from "./logbook/logbook.ts";

/** The files of data/demo/cases by name, each as the text that it holds. Takes the list of films as it was read. */
export function caseFiles(rawFilmList: unknown): Readonly<Record<string, string>> {
  const list: readonly FilmOnList[] = filmsOnList(rawFilmList);
  const readable = (file: CaseFile): string => `${JSON.stringify(file, null, 1)}\n`;
  return {
    "a.json": readable(caseA(list)),
    "b.json": readable(caseB(list)),
    "c.json": readable(caseC(list)),
    "logbook.json": `[\n${logbook()
      .map((file) => JSON.stringify(file))
      .join(",\n")}\n]\n`,
  };
}
