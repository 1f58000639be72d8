import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { Within } from "../../../parts/fields/editing.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import type { Sheet } from "./use-sheet.ts";

const roleWords = { tooth: "the tooth", control: "control" } as const;

/** The head of a column: which tooth it is, and whether it is the one that is examined or a control. */
export function TestedTooth({ sheet, index }: { readonly sheet: Sheet; readonly index: number }) {
  const { teeth, readOnly, write } = sheet;
  const tooth = teeth[index]?.tooth ?? "";
  const name = tooth === "" ? `tooth ${index + 1}` : tooth;
  const remove = () =>
    write(
      teeth.filter((_, one) => one !== index),
      `${name} taken out`,
    );
  return (
    <th scope="col">
      <Within at={`teeth.${index}`} of={name}>
        <div className="tested-tooth">
          <TextField at="tooth" label="Tooth" bare />
          {!readOnly && teeth.length > 1 && (
            <button type="button" className="tested-tooth-remove" onClick={remove} aria-label={`Remove ${name}`}>
              <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M4 4l8 8M12 4l-8 8" />
              </svg>
            </button>
          )}
        </div>
        <SelectField at="role" label="Role" words={roleWords} bare />
      </Within>
    </th>
  );
}
