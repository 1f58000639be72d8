import { thePart } from "../record/parts.ts";
import type { CaseSource } from "./case-source.ts";
import { ledgerReader } from "./ledger-reader.ts";
import type { PageModel } from "./page-model.ts";
import { inWords, sentence } from "./record-words.ts";
import { toothFigure } from "./tooth-figure.ts";

/** The title, the emblem, and the line that stands on every page. */
export function titleOf(source: CaseSource): Pick<PageModel, "title" | "mark" | "demo" | "emblem"> {
  const about = thePart(source.parts, "case");
  if (about === undefined) return { title: "Case", mark: "", demo: false };
  const { tooth, treatment, pseudonym, demo, sex, birthYear, presentedOn } = about.body;
  const read = ledgerReader(source.ledger);
  const name = read.text(`tooth of ${about.id}`, "name")?.text ?? "tooth";
  const shown = read.text(`tooth of ${about.id}`, source.notation)?.text ?? tooth;
  const age = Number(presentedOn.slice(0, 4)) - birthYear;
  const who = [pseudonym, sex === "notRecorded" ? "" : sex, `about ${age}`].filter((piece) => piece !== "").join(", ");
  const emblem = toothFigure(source, 600);
  return {
    title: `${shown} ${name}: ${inWords(treatment)}`,
    mark: demo ? `${sentence(who)} · Demo: invented` : sentence(who),
    demo,
    ...(emblem === undefined ? {} : { emblem }),
  };
}
