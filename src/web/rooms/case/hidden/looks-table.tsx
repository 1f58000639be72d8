import { lookResultsOf } from "../../../../record/look-results.ts";
import { lookWords, resultWords } from "../../../../record/words/search-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { rowName } from "../forms/row-name.ts";
import { isLookKind, type LookKind } from "./add-look.tsx";
import { WallKnown, WhyCbct } from "./next-looks.tsx";

/** The looks so far; sensitivity and specificity are the person's own, and stand in place of published ones. */
export function LooksTable() {
  const { value } = useField("looks", "Looks");
  if (!Array.isArray(value) || value.length === 0)
    return <p className="quiet">No look yet: the chance is that of the series alone.</p>;
  const taken = (kind: LookKind) => value.some((look) => rowName(look, "kind", "") === kind);
  return (
    <>
      <Rows
        at="looks"
        label="Looks"
        start={() => undefined}
        nameOf={(row, index) => `look ${index + 1}, ${wordOf(rowName(row, "kind", ""))}`}
        columns={[
          { head: "On", cell: <DayField at="on" label="Day" bare /> },
          { head: "Look", cell: <Kind /> },
          { head: "Came to", cell: <Result /> },
          {
            head: "Sensitivity",
            cell: <NumberField at="sensitivity" label="Sensitivity, 0 to 1" bare />,
            figure: true,
          },
          {
            head: "Specificity",
            cell: <NumberField at="specificity" label="Specificity, 0 to 1" bare />,
            figure: true,
          },
          {
            head: "Both from",
            cell: <TextField at="from" label="Where both come from" optional wraps bare />,
            wide: true,
          },
          { head: "Note", cell: <TextField at="note" label="Note" wraps bare />, wide: true },
        ]}
      />
      {taken("cbct") && <WhyCbct />}
      {taken("troughing") && <WallKnown />}
      <p className="quiet">
        Sensitivity and specificity from 0 to 1, as 0.87: only where yours are to stand in place of published ones, or
        where nothing is published.
      </p>
    </>
  );
}

const wordOf = (kind: string): string => (isLookKind(kind) ? lookWords[kind] : kind);

function Kind() {
  const { value } = useField("kind", "Kind");
  return (
    <span className="look-kind">
      {typeof value === "string" ? wordOf(value) : ""}
      {value === "troughing" && (
        <span className="look-depth">
          <NumberField at="depthMm" label="Depth" unit="mm" bare />
          <span className="quiet">mm deep</span>
        </span>
      )}
    </span>
  );
}

function Result() {
  const { value } = useField("kind", "Kind");
  const results = typeof value === "string" && isLookKind(value) ? lookResultsOf(value) : [];
  const words = Object.fromEntries(results.map((result) => [result, resultWords[result]]));
  return <SelectField at="result" label="Result" words={words} bare />;
}
