import type { InputPath, LedgerEntry } from "../../../../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf } from "../../../../record/parts.ts";
import { purposeWords } from "../../../../record/words/later-words.ts";
import { featureWords } from "../../../../record/words/search-words.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { capital, lowered } from "../../../words/capital.ts";
import { valueInWords } from "../../../words/value-words.ts";
import { titles } from "../spine/spine-moments.ts";
import { instrumentSubject } from "./instrument-subject.ts";
import { entryName } from "./ledger-lines.ts";
import type { EntrySubject } from "./subject-words.ts";
import { visitSubject } from "./visit-subject.ts";

/** Where one input of a sum came from: in words, and the address of the place. */
export interface InputOrigin {
  readonly input: string;
  readonly from: string;
  readonly href: string;
}

const partIn = (record: string, parts: readonly Part[]): Part | undefined =>
  parts.find((part) => record.startsWith(`${part.id}/`) || record === part.id);

const aboutNoFilm: EntrySubject = { canal: "", film: "", day: "" };

/** See {@link EntrySubject}. */
export function entrySubject(entry: Pick<LedgerEntry, "subject" | "topic">, parts: readonly Part[]): EntrySubject {
  const about = entry.subject.split(" of ").at(-1) ?? "";
  const used = visitSubject(entry.topic, entry.subject, parts) ?? instrumentSubject(entry.topic, about, parts);
  if (used !== undefined) return used;
  if (entry.topic === "twoView" || entry.topic === "tubeShift") return subjectInSpace(about, parts);
  const part = parts.find(({ id }) => id === about);
  if (part?.kind === "film") return { canal: "", ...namedFilm(part, parts) };
  if (part?.kind === "findings") return ofDay("findings", part.body.takenOn);
  if (part?.kind === "plan") return ofDay("plan", part.body.madeOn);
  if (part?.kind === "case" && isOverTime(entry, parts)) return { ...aboutNoFilm, film: "case as it stands now" };
  if (part?.kind === "search") return { ...aboutNoFilm, canal: capital(featureWords[part.body.feature]) };
  if (part?.kind === "comparison") return subjectOfTwoDates([part.body.before, part.body.after], parts);
  if (part?.kind !== "mark") return aboutNoFilm;
  const film = parts.find((one) => one.id === part.body.film);
  const canal = part.body.shape === "trace" ? (part.body.canal ?? "a course") : ownerOf(part.body);
  return film === undefined ? { ...aboutNoFilm, canal } : { canal, ...namedFilm(film, parts) };
}

/** What a sheet of findings gave, and what was known when a plan was made, is named by its day. */
const ofDay = (what: string, day: string): EntrySubject => ({ canal: "", film: `${what} of ${dayInWords(day)}`, day });

/** What is asked of each plan's day as well says by its name that it is of now, where there is a plan. */
const isOverTime = ({ topic }: Pick<LedgerEntry, "topic">, parts: readonly Part[]): boolean =>
  (topic === "plan" || topic === "difficulty") && partsOf(parts, "plan").length > 0;

/** A course in space is named by its canal and the films that gave it: `DL film-1 film-2`. */
function subjectInSpace(about: string, parts: readonly Part[]): EntrySubject {
  const [canal = "", ...ids] = about.split(" ");
  const films = ids.flatMap((id) => partsOf(parts, "film").find((film) => film.id === id) ?? []);
  const [first] = films;
  const last = films.at(-1);
  if (first === undefined || last === undefined || films.length < ids.length) return { ...aboutNoFilm, canal };
  if (ids.length === 1) return { canal, ...namedFilm(first, parts) };
  const days = [...new Set(films.map(({ body }) => body.takenOn))];
  const day = last.body.takenOn;
  if (films.length > 2) return { canal, film: `${films.length} films together, ${spanOf(days)}`, day };
  const purposes = films.map(({ body }) => purposeWords[body.purpose]).join(" and ");
  return { canal, film: `${purposes} film together, ${days.map(dayInWords).join(" and ")}`, day };
}

/** From the first of the days to the last. */
function spanOf(days: readonly string[]): string {
  const [first = "", ...later] = [...days].sort();
  const last = later.at(-1);
  return last === undefined ? dayInWords(first) : `${dayInWords(first)} to ${dayInWords(last)}`;
}

/** Two films compared are named by their days. */
function subjectOfTwoDates(ids: readonly string[], parts: readonly Part[]): EntrySubject {
  const films = ids.flatMap((id) => partsOf(parts, "film").find((film) => film.id === id) ?? []);
  const days = films.map(({ body }) => dayInWords(body.takenOn)).join(" and ");
  return { canal: "", film: `films of ${days} compared`, day: films.at(-1)?.body.takenOn ?? "" };
}

/** The canal or root of a mark that is no course; empty where it has none. */
const ownerOf = (body: PartOf<"mark">["body"]): string =>
  ("canal" in body ? body.canal : undefined) ?? ("root" in body ? body.root : undefined) ?? "";

const namedFilm = (film: Part, parts: readonly Part[]): Pick<EntrySubject, "film" | "day"> => ({
  film: filmWords(film, parts),
  day: film.kind === "film" ? film.body.takenOn : "",
});

/** What an entry is called: `MB1: largest bend`. */
export function entryTitle(entry: Pick<LedgerEntry, "subject" | "topic">, parts: readonly Part[]): string {
  const { canal } = entrySubject(entry, parts);
  const name = entryName(entry.topic);
  return canal === "" ? name : `${canal}: ${lowered(name)}`;
}

/** A film as one would call it: its purpose and day. */
function filmWords(film: Part, parts: readonly Part[]): string {
  if (film.kind !== "film") return "";
  const { purpose, takenOn } = film.body;
  const alike = parts.filter(
    (one) => one.kind === "film" && one.body.purpose === purpose && one.body.takenOn === takenOn,
  );
  const number = alike.length > 1 ? ` ${alike.findIndex((one) => one.id === film.id) + 1}` : "";
  return `${purposeWords[purpose]} film${number} of ${dayInWords(takenOn)}`;
}

/** Where an input of an entry came from. */
export function inputOrigin({ input, record }: InputPath, parts: readonly Part[], caseId: string): InputOrigin {
  const name = valueInWords(input);
  const [first = "", ...rest] = record.split("/");
  if (first === "settings")
    return { input: name, from: `settings: ${valueInWords(rest.join(" ")).toLowerCase()}`, href: "/settings" };
  if (first === "ledger")
    return {
      input: name,
      from: `another entry: ${valueInWords(rest.slice(1).join(" ")).toLowerCase()}`,
      href: `#${rest[0] ?? ""}`,
    };
  const part = partIn(record, parts);
  if (part === undefined) return { input: name, from: "a part that no longer stands", href: `/case/${caseId}` };
  return { input: name, ...placeOf(part, parts, caseId, rest) };
}

function placeOf(part: Part, parts: readonly Part[], caseId: string, rest: readonly string[]) {
  const field = fieldInWords(rest);
  if (part.kind === "film")
    return { from: `${filmWords(part, parts)}: ${field}`, href: `/case/${caseId}/light-box/${part.id}` };
  if (part.kind === "mark")
    return { from: `mark on a film: ${field}`, href: `/case/${caseId}/light-box/${part.body.film}` };
  if (part.kind === "comparison")
    return { from: `two dates compared: ${field}`, href: `/case/${caseId}/light-box/compare/${part.id}` };
  if (part.kind === "search") return { from: `search: ${searchPlace(rest)}`, href: `/case/${caseId}/hidden` };
  return { from: `${titles[part.kind].toLowerCase()}: ${field}`, href: `/case/${caseId}/${part.id}` };
}

/** A field by its name, a row of a list by the list and its number: `anaesthetic 2`. */
function fieldInWords(rest: readonly string[]): string {
  const last = rest.at(-1) ?? "";
  if (!/^\d+$/.test(last)) return valueInWords(last).toLowerCase();
  return `${valueInWords(rest.at(-2) ?? "").toLowerCase()} ${Number(last) + 1}`.trim();
}

/** A look of a search by its number, else the field. */
const searchPlace = ([field = "", index]: readonly string[]): string =>
  index === undefined ? valueInWords(field).toLowerCase() : `look ${Number(index) + 1}`;

/** The parts that an entry's inputs came from directly. */
export const partsBehind = (entry: Pick<LedgerEntry, "inputPaths">, parts: readonly Part[]): readonly Part[] => [
  ...new Set(entry.inputPaths.flatMap(({ record }) => partIn(record, parts) ?? [])),
];
