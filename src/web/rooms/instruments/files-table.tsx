import { Link } from "wouter";
import type { CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { filesOf } from "../../../record/cabinet/items-of-cabinet.ts";
import { Button } from "../../parts/button.tsx";
import { dayInWords } from "../../parts/days-in-words.ts";
import { numberInWords } from "../../parts/figures-in-words.ts";
import { useCabinetNow } from "./cabinet-now.ts";
import { FileFlag } from "./file-flag.tsx";
import "./files-table.css";
import { nameOfInstrument, nameOfItem } from "./item-names.ts";
import { turnsInWords } from "./turns-in-words.ts";

/** Every counted file with what it has behind it; those that were discarded stand below. */
export function FilesTable() {
  const { view } = useCabinetNow();
  const files = filesOf(view.items);
  const [open, gone] = [files.filter(({ body }) => !body.discarded), files.filter(({ body }) => body.discarded)];
  return (
    <section className="form-part">
      <h3>Counted files</h3>
      {open.length > 0 && <Files files={open} />}
      {gone.length > 0 && (
        <details className="files-gone">
          <summary>Discarded, {gone.length}</summary>
          <Files files={gone} />
        </details>
      )}
    </section>
  );
}

const heads = ["Visits", "Canals", "Sterilised", "Turns", "Equivalent turns", "Last used"] as const;

const Files = ({ files }: { readonly files: readonly CabinetItemOf<"file">[] }) => (
  <table className="files-table">
    <caption className="unseen">Counted files</caption>
    <thead>
      <tr>
        <th scope="col">File</th>
        {heads.map((head) => (
          <th key={head} scope="col" data-figure="true">
            {head}
          </th>
        ))}
        <td />
      </tr>
    </thead>
    {files.map((file) => (
      <tbody key={file.id}>
        <FileRow file={file} />
      </tbody>
    ))}
  </table>
);

function FileRow({ file }: { readonly file: CabinetItemOf<"file"> }) {
  const { view, sterilised } = useCabinetNow();
  const tally = view.files[file.id];
  const label = nameOfItem(file);
  const figures = tally && [
    ...[tally.uses, tally.canals, tally.sterilisations, tally.turnsNet].map((value) => numberInWords(value, 0)),
    tally.equivalentTurns ? turnsInWords(tally.equivalentTurns) : "not computed",
    tally.lastUsedOn ? dayInWords(tally.lastUsedOn) : "not yet",
  ];
  return (
    <>
      <tr>
        <th scope="row">
          <Link href={`/instruments/${file.id}`}>{label}</Link>
          <span className="quiet">
            {file.body.demo === true && "demo, "}
            {nameOfInstrument(view.items, file.body.instrument)}
          </span>
        </th>
        {heads.map((head, at) => (
          <td key={head} data-figure="true">
            {figures?.[at] ?? ""}
          </td>
        ))}
        <td>
          {!file.body.discarded && (
            <Button onClick={() => sterilised(file.id)}>
              Sterilised today<span className="unseen">: {label}</span>
            </Button>
          )}
        </td>
      </tr>
      <tr className="files-flag">
        <td colSpan={8}>
          <FileFlag file={file} view={view} />
        </td>
      </tr>
    </>
  );
}
