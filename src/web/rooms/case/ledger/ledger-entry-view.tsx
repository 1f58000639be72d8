import { useId, useState } from "react";
import { Link } from "wouter";
import type { Basis } from "../../../../core/basis.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { type Part, thePart } from "../../../../record/parts.ts";
import { Cautions, isActedOn } from "../../../parts/cautions.tsx";
import { momentInWords } from "../../../parts/days-in-words.ts";
import { countOf } from "../../../parts/figures-in-words.ts";
import { valueAt } from "../../../record/body-path.ts";
import { useSettings } from "../../../record/readings.ts";
import { sideOfTooth } from "../../../words/two-view-words.ts";
import { refusalInWords, sentenceInWords, valueInWords } from "../../../words/value-words.ts";
import { BasisView } from "./basis-view.tsx";
import { clickOrigins } from "./click-origin.ts";
import { entrySubject, inputOrigin } from "./entry-subject.ts";
import type { LedgerLine } from "./ledger-line.ts";
import { ledgerLines, speaksFor } from "./ledger-lines.ts";
import { foundAsLine, ledgerTitle, settledFirst } from "./settled-search.ts";

interface EntryOptions {
  readonly caseId: string;
  readonly entry: LedgerEntry;
  readonly parts: readonly Part[];
  readonly open?: boolean;
  /** Its film stands over it already. */
  readonly underFilm?: boolean;
  /** Values of other entries that are read beside it. */
  readonly beside?: readonly LedgerLine[];
}

/** One entry: a number in words that opens to everything that made it. */
export function LedgerEntryView({ caseId, entry, parts, open: atFirst = false, ...place }: EntryOptions) {
  const [open, setOpen] = useState(atFirst);
  const inside = useId();
  const lines = [...linesInTooth(entry, parts), ...(place.beside ?? [])];
  const first = lines.find(({ at }) => at === foundAsLine || speaksFor(entry.topic, at));
  const cautions = texts(valueAt(entry.output, "cautions"));
  const film = place.underFilm === true ? "" : entrySubject(entry, parts).film;
  const length = entry.topic === "curvature" ? lines.find(({ at }) => at === "lengthMm") : undefined;
  return (
    <section className="ledger-entry" id={entry.id} data-open={open}>
      <button
        type="button"
        className="ledger-row"
        aria-expanded={open}
        aria-controls={inside}
        onClick={() => setOpen(!open)}
      >
        <span className="ledger-name">{ledgerTitle(entry, parts)}</span>
        <span className="ledger-value">{first?.value ?? <span className="quiet">not computed</span>}</span>
        <span className="ledger-says">
          {[first?.interval ?? "", length === undefined ? "" : `${length.value} long`, film]
            .filter((text) => text !== "")
            .join(" · ")}
          {cautions.length > 0 && (
            <span className="ledger-caution" data-look={isActedOn(entry.topic)}>
              {countOf(cautions.length, "caution")}
            </span>
          )}
        </span>
      </button>
      {open && (
        <div className="ledger-inside" id={inside}>
          {entry.refused?.map((why) => (
            <p key={why}>{refusalInWords(why)}</p>
          ))}
          {lines.some((line) => line !== first) && <Values lines={lines} />}
          <Cautions topic={entry.topic} cautions={cautions} />
          <Missing of={valueAt(entry.output, "notComputed")} />
          <ToItsRoom caseId={caseId} entry={entry} parts={parts} />
          <Inputs {...{ caseId, entry, parts }} />
          <Grounds entry={entry} />
        </div>
      )}
    </section>
  );
}

/** The values of an entry, with sides called as they are in the tooth. */
function linesInTooth(entry: LedgerEntry, parts: readonly Part[]): readonly LedgerLine[] {
  const tooth = thePart(parts, "case")?.body.tooth ?? "";
  return settledFirst(ledgerLines(entry), entry, parts).map((line) => ({
    ...line,
    value: sideOfTooth(line.value, tooth),
  }));
}

/** A canal in space has a room of its own, where its films stand side by side. */
function ToItsRoom({ caseId, entry, parts }: Pick<EntryOptions, "caseId" | "entry" | "parts">) {
  const { canal } = entrySubject(entry, parts);
  if ((entry.topic !== "twoView" && entry.topic !== "tubeShift") || canal === "") return null;
  return (
    <p>
      <Link href={`/case/${caseId}/light-box/two-view/${encodeURIComponent(canal)}`}>
        {canal} in space, film by film
      </Link>
    </p>
  );
}

const texts = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((item): item is string => typeof item === "string") : [];

const Values = ({ lines }: { readonly lines: readonly LedgerLine[] }) => (
  <table className="ledger-values">
    <tbody>
      {lines.map((line) => (
        <tr key={line.at}>
          <th scope="row">{line.name}</th>
          <td>{line.value}</td>
          <td className="quiet">{line.interval}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

function Missing({ of: missing }: { readonly of: unknown }) {
  const list = Array.isArray(missing) ? missing.filter(isMissing) : [];
  const reasons = [...new Set(list.map(({ why }) => why))];
  if (list.length === 0) return null;
  return (
    <section>
      <h3>Not computed</h3>
      <ul>
        {reasons.map((why) => (
          <li key={why}>
            {namesIn(list.filter((one) => one.why === why))}. {sentenceInWords(why)}.
          </li>
        ))}
      </ul>
    </section>
  );
}

/** `Interval, disagreement`: several that are missing for one reason. */
const namesIn = (list: readonly { readonly name: string }[]): string =>
  list
    .map(({ name }) => valueInWords(name).replaceAll(".", ", ").toLowerCase())
    .join(", ")
    .replace(/^./, (letter) => letter.toUpperCase());

const isMissing = (value: unknown): value is { name: string; why: string } =>
  typeof value === "object" && value !== null && "name" in value && "why" in value;

function Inputs({ caseId, entry, parts }: Pick<EntryOptions, "caseId" | "entry" | "parts">) {
  const settings = useSettings().data;
  const origins = entry.inputPaths.flatMap((path) => {
    const origin = inputOrigin(path, parts, caseId);
    return clickOrigins(path, entry.inputPaths, settings)?.map((click) => ({ ...origin, ...click })) ?? [origin];
  });
  if (origins.length === 0) return null;
  return (
    <section>
      <h3>Inputs</h3>
      <ul className="ledger-inputs">
        {origins.map(({ input, from, href }) => (
          <li key={input + from}>
            {input}: {href.startsWith("#") ? <a href={href}>{from}</a> : <Link href={href}>{from}</Link>}
          </li>
        ))}
      </ul>
    </section>
  );
}

const Grounds = ({ entry }: { readonly entry: LedgerEntry }) => (
  <BasisView topic={entry.topic} basis={basisOf(entry.output)}>
    , version {entry.topicVersion} · entered {momentInWords(entry.at)}
  </BasisView>
);

function basisOf(output: unknown): Basis | undefined {
  const basis = valueAt(output, "basis");
  return typeof basis === "object" &&
    basis !== null &&
    "formula" in basis &&
    "assumptions" in basis &&
    "sources" in basis
    ? (basis as Basis)
    : undefined;
}
