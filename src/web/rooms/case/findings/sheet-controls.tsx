import { controlTeeth, nextControl } from "../../../../record/control-teeth.ts";
import { Button } from "../../../parts/button.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { emptyTestedTooth } from "../new-bodies.ts";
import type { Sheet } from "./use-sheet.ts";

/** A sheet holds so many teeth at most. */
const most = 8;

/** Adds controls to a sheet, and shows more of the earlier sheets. */
export function SheetControls({ sheet }: { readonly sheet: Sheet }) {
  const { teeth, write } = sheet;
  const tooth = teeth.find(({ role }) => role === "tooth")?.tooth ?? "";
  const onSheet = teeth.map((one) => one.tooth);
  const missing = controlTeeth(tooth)
    .filter((one) => !onSheet.includes(one))
    .slice(0, most - teeth.length);
  const add = (controls: readonly string[]) =>
    controls.length > 0 &&
    write([...teeth, ...controls.map((one) => emptyTestedTooth(one, "control"))], `${inWords(controls)} added`);
  useShortcut("c", "Case", "Neighbours and the tooth across as controls", () => !sheet.readOnly && add(missing));
  return (
    <p className="sheet-controls">
      {!sheet.readOnly && missing.length > 0 && (
        <Button hint="c" onClick={() => add(missing)}>
          {missing.length === 1 ? "Add control" : "Add controls"} {inWords(missing)}
        </Button>
      )}
      {!sheet.readOnly && teeth.length < most && (
        <Button weight="bare" onClick={() => add([nextControl(tooth, onSheet)])}>
          Add another control tooth
        </Button>
      )}
      <Earlier sheet={sheet} />
    </p>
  );
}

const inWords = (list: readonly string[]): string =>
  list.length < 2 ? (list[0] ?? "") : `${list.slice(0, -1).join(", ")} and ${list.at(-1)}`;

function Earlier({ sheet }: { readonly sheet: Sheet }) {
  if (sheet.before === 0) return null;
  const whole =
    sheet.before === 1 ? "Controls of the earlier sheet too" : `All ${sheet.before} earlier sheets, controls too`;
  return (
    <Button weight="bare" aria-expanded={sheet.allShown} onClick={() => sheet.showAll(!sheet.allShown)}>
      {sheet.allShown ? "Less of the earlier sheets" : whole}
    </Button>
  );
}
