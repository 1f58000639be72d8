import { type Block, type Page, says } from "../page-model.ts";
import type { ConsentCase } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";
import { plainReason } from "./plain-reason.ts";

/** What is advised, and why; where no reason is written in plain words, lines to write it on. */
export function choicePage({ ways, plan }: ConsentCase): Page {
  const name = ways.options.find(({ way }) => way === plan.chosen)?.plain.name ?? "";
  const reason = plainReason(plan);
  const why: Block[] =
    reason === undefined
      ? [
          { kind: "text", lines: [says(consentWords.whyBlank)] },
          { kind: "blanks", labels: ["", ""] },
        ]
      : [{ kind: "text", lines: reason.split(/\n+/).map(says) }];
  const advice: Block = { kind: "text", lines: [says(`${consentWords.weAdvise} ${name}.`)] };
  return { title: consentWords.choice, on: "", blocks: [advice, ...why], notes: [] };
}
