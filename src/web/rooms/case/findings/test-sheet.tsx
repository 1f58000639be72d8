import type { ReactNode } from "react";
import { touchWords } from "../../../../record/words/finding-words.ts";
import { type SheetTest, sheetTests, testNames } from "../../../../record/words/test-words.ts";
import { Within } from "../../../parts/fields/editing.tsx";
import { moveInTable } from "../../../parts/fields/move-in-table.ts";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { KeyCell } from "../forms/key-cell.tsx";
import { EarlierCell, EarlierDays, EarlierTeeth } from "./earlier-cells.tsx";
import { ProbingStrip } from "./probing-strip.tsx";
import { SheetControls } from "./sheet-controls.tsx";
import { SheetKeys } from "./sheet-keys.tsx";
import { TestedTooth } from "./tested-tooth.tsx";
import "./test-sheet.css";
import { ThermalCell } from "./thermal-cell.tsx";
import { type Sheet, useSheet } from "./use-sheet.ts";

/** The sheet of tests: a row a test, a column a tooth, as one goes from tooth to tooth at the chair; earlier sheets beside it. */
export function TestSheet() {
  const sheet = useSheet();
  return (
    <div className="rows">
      <div className="rows-scroll">
        <table className="rows-table test-sheet" onKeyDown={moveInTable}>
          <caption className="unseen">Tests by tooth</caption>
          <SheetHead sheet={sheet} />
          <tbody>
            {sheetTests.map((test) => (
              <tr key={test}>
                <th scope="row">
                  {testNames[test]}
                  {test === "probingMm" && <span className="rows-unit"> mm</span>}
                </th>
                {sheet.teeth.map(({ tooth }, index) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: columns of a sheet have no other name than their place
                  <td key={index}>
                    <Within at={`teeth.${index}`} of={tooth === "" ? `tooth ${index + 1}` : tooth}>
                      {cellOf(test, tooth)}
                    </Within>
                  </td>
                ))}
                {sheet.earlier.map((column) => (
                  <EarlierCell key={`${column.sheet.id} ${column.tooth}`} {...{ sheet, column, test }} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <SheetControls sheet={sheet} />
      <SheetKeys />
    </div>
  );
}

const SheetHead = ({ sheet }: { readonly sheet: Sheet }) => (
  <thead>
    <EarlierDays sheet={sheet} />
    <tr>
      <td>
        <span className="unseen">test</span>
      </td>
      {sheet.teeth.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: columns of a sheet have no other name than their place
        <TestedTooth key={index} sheet={sheet} index={index} />
      ))}
      <EarlierTeeth sheet={sheet} />
    </tr>
  </thead>
);

const noReply = { n: "none", "-": "none", x: "notDone" } as const;
const degrees = { "0": "0", "1": "1", "2": "2", "3": "3", notDone: "not done" } as const;

function cellOf(test: SheetTest, tooth: string): ReactNode {
  const label = testNames[test];
  switch (test) {
    case "cold":
    case "heat":
      return <ThermalCell at={test} label={label} />;
    case "electric":
      return <NumberField at={test} label={label} words={noReply} placeholder="not done" required bare />;
    case "mobility":
      return <KeyCell at={test} label={label} words={degrees} digits />;
    case "probingMm":
      return <ProbingStrip at={test} label={label} tooth={tooth} />;
    default:
      return <KeyCell at={test} label={label} words={touchWords} />;
  }
}
