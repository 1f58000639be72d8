import { thePart } from "../record/parts.ts";
import { patientInWords, treatmentWords } from "../record/words/case-words.ts";
import type { CaseSource } from "./case-source.ts";
import { ledgerReader } from "./ledger-reader.ts";
import type { PageModel } from "./page-model.ts";
import { sentence } from "./sentence.ts";
import { toothFigure } from "./tooth-figure.ts";

/** The title, the emblem, and the line that stands on every page. */
export function titleOf(source: CaseSource): Pick<PageModel, "title" | "mark" | "demo" | "emblem"> {
  const about = thePart(source.parts, "case");
  if (about === undefined) return { title: "Case", mark: "", demo: false };
  const { tooth, treatment, pseudonym, demo, presentedOn } = about.body;
  const read = ledgerReader(source.ledger);
  const name = read.text(`tooth of ${about.id}`, "name")?.text ?? "tooth";
  const shown = read.text(`tooth of ${about.id}`, source.notation)?.text ?? tooth;
  const who = `${pseudonym}, ${patientInWords(about.body, presentedOn)}`;
  const emblem = toothFigure(source, 600);
  return {
    title: `${shown} ${name}: ${treatmentWords[treatment]}`,
    mark: demo ? `${sentence(who)} · Demo: invented` : sentence(who),
    demo,
    ...(emblem === undefined ? {} : { emblem }),
  };
}
