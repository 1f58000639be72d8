import { earlierValue } from "../../../../record/earlier-sheets.ts";
import type { SheetTest } from "../../../../record/words/test-words.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import type { EarlierColumn, Sheet } from "./use-sheet.ts";

/** The days of the sheets that stand beside this one, over their columns. */
export function EarlierDays({ sheet }: { readonly sheet: Sheet }) {
  const sheets = [...new Set(sheet.earlier.map((column) => column.sheet))];
  if (sheets.length === 0) return null;
  return (
    <tr>
      <td />
      <th scope="colgroup" colSpan={sheet.teeth.length}>
        this sheet
      </th>
      {sheets.map((earlier) => (
        <th
          key={earlier.id}
          scope="colgroup"
          className="earlier-cell"
          colSpan={sheet.earlier.filter((column) => column.sheet === earlier).length}
        >
          {dayInWords(earlier.body.takenOn)}
        </th>
      ))}
    </tr>
  );
}

/** Which tooth each earlier column is of. */
export const EarlierTeeth = ({ sheet }: { readonly sheet: Sheet }) =>
  sheet.earlier.map((column) => (
    <th key={`${column.sheet.id} ${column.tooth}`} scope="col" className="earlier-cell">
      {column.tooth}
    </th>
  ));

interface EarlierCellOptions {
  readonly sheet: Sheet;
  readonly column: EarlierColumn;
  readonly test: SheetTest;
}

/** What a tooth said to a test on an earlier day, marked where it says something else now. */
export function EarlierCell({ sheet, column, test }: EarlierCellOptions) {
  const { says, changed } = earlierValue(column.sheet.body, sheet.body, column.tooth, test);
  return (
    <td className="earlier-cell" data-changed={changed}>
      {says === "" ? <i>not done</i> : says}
      {changed && (
        <>
          <span aria-hidden="true"> ≠</span>
          <span className="unseen">, differs from this sheet</span>
        </>
      )}
    </td>
  );
}
