import { useMemo } from "react";
import { Link } from "wouter";
import { letter } from "../../../../../pages/letter.ts";
import type { Block, Line } from "../../../../../pages/page-model.ts";
import { useSettings } from "../../../../record/readings.ts";
import { useHandback } from "./use-handback.ts";

const nothing = new Map<string, never>();

/** What the letter would say now. */
export function LetterPreview() {
  const { caseId, ledger, parts } = useHandback();
  const settings = useSettings().data;
  const model = letter({
    ...{ caseId, parts, ledger, references: nothing, methods: nothing, theme: "paper" as const },
    ...{ notation: settings?.notation ?? "twoDigit", firstCall: settings?.emergency?.calls[0] },
  });
  return (
    <section className="handback-letter" aria-labelledby="handback-letter">
      <h2 id="handback-letter">The letter as it would read</h2>
      <p className="quiet">
        {model.mark} Names and days are written by hand. <Link href={`/case/${caseId}/documents`}>Make it a PDF</Link>
      </p>
      {model.pages.map((page, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: sections of a letter have no other name than their place
        <div key={at}>
          {page.title !== "" && <h3>{page.title}</h3>}
          {page.blocks.map((block, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: blocks have no other name than their place
            <BlockInWords key={place} block={block} />
          ))}
        </div>
      ))}
    </section>
  );
}

const words = (line: Line): string => line.map(({ text }) => text).join("");

function BlockInWords({ block }: { readonly block: Block }) {
  const rows = useMemo(() => (block.kind === "table" ? block.rows.map((row) => row.map(words)) : []), [block]);
  if (block.kind === "table")
    return (
      <div className="handback-table">
        <table className="ruled-table">
          <caption>{block.caption}</caption>
          <thead>
            <tr>
              {block.columns.map(({ head }) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row[0]}>
                {row.map((cell, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: cells have no other name than their place
                  <td key={at}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    );
  if (block.kind !== "text") return null;
  return (
    <>
      {block.heading !== undefined && <h4>{block.heading}</h4>}
      {block.lines.map(words).map((line) => (
        <p key={line}>{block.points === true ? `· ${line}` : line}</p>
      ))}
    </>
  );
}
