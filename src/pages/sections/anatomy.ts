import { canalsEntry, canalsRead, unusualRootCount } from "../../ledger/canals-read.ts";
import { thePart } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { ledgerReader } from "../ledger-reader.ts";
import { type Line, type Page, says } from "../page-model.ts";
import { toothFigure } from "../tooth-figure.ts";

/** The emblem at full size, and each root with its sequence and type. */
export function anatomyPages(source: CaseSource): Page[] {
  const anatomy = thePart(source.parts, "anatomy");
  const figure = toothFigure(source, 900);
  if (anatomy === undefined || figure === undefined) return [];
  const read = ledgerReader(source.ledger);
  const subject = `canals of ${anatomy.id}`;
  const cell = (path: string): Line => [read.text(subject, path) ?? { text: "none of the classes", quiet: true }];
  const code = read.text(subject, "code.display");
  return [
    {
      title: "Roots and canals",
      on: thePart(source.parts, "case")?.body.presentedOn ?? "",
      ...(code === undefined ? {} : { subtitle: `Code (Ahmed and others 2017): ${code.text}` }),
      blocks: [
        { kind: "figure", figure, caption: "Section at the level of the orifices, and the course of each root" },
        {
          kind: "table",
          caption: "Canals from orifice to foramen",
          columns: [
            { head: "Root", align: "left", share: 0.3 },
            { head: "Sequence", align: "left", share: 0.3 },
            { head: "Type (Vertucci 1984)", align: "left", share: 0.4 },
          ],
          rows: anatomy.body.roots.map((root, index) => [
            says(root.name),
            cell(`roots[${index}].sequence`),
            cell(`roots[${index}].vertucci`),
          ]),
        },
      ],
      notes: formNotes(source, anatomy.body.unusualBecause),
    },
  ];
}

/** What is unusual in the form, and why it is right or that nobody has said so yet. */
function formNotes({ ledger }: CaseSource, because = ""): readonly string[] {
  const unusual = unusualRootCount(canalsRead(canalsEntry(ledger)));
  const reason = because === "" ? "No reason is recorded for it yet." : `Why this form is right: ${because}`;
  if (unusual !== undefined) return [unusual, reason];
  return because === "" ? [] : [reason];
}
