import { filesOf } from "../../../../record/cabinet/items-of-cabinet.ts";
import { countedFileOf } from "../../../../record/cabinet/use-of-step.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { faultProps, Labelled } from "../../../parts/fields/labelled.tsx";
import { useCabinet } from "../../../record/cabinet.ts";
import { FileFlag } from "../../instruments/file-flag.tsx";
import { nameOfInstrument, nameOfItem } from "../../instruments/item-names.ts";

type File = NonNullable<BodyOf<"visit">["instruments"][number]["file"]>;

/** Which counted file of the cabinet it was; what stood against it before goes with it. */
export function CountedFileField() {
  const field = useField("file", "Counted file");
  const { view } = useCabinet();
  const now = field.value as File | undefined;
  const files = filesOf(view?.items ?? []);
  const chosen = files.find(({ id }) => id === now?.id);
  const write = (id: string) => {
    const file = files.find((one) => one.id === id);
    if (file === undefined) field.write(undefined, "not counted", "now");
    else field.write(countedFileOf({ file, standing: view?.files[id] }), nameOfItem(file), "now");
  };
  return (
    <Labelled field={field} label="Counted file">
      <select
        id={field.id}
        className="field-select"
        value={now?.id ?? ""}
        disabled={field.readOnly}
        {...faultProps(field)}
        onChange={({ target }) => write(target.value)}
      >
        <option value="">not counted</option>
        {now !== undefined && chosen === undefined && <option value={now.id}>{now.label}, not in the cabinet</option>}
        {files.map((file) => (
          <option key={file.id} value={file.id}>
            {nameOfItem(file)}, {nameOfInstrument(view?.items ?? [], file.body.instrument)}
            {file.body.discarded ? ", discarded" : ""}
          </option>
        ))}
      </select>
      {view !== undefined && chosen !== undefined && <FileFlag file={chosen} view={view} />}
    </Labelled>
  );
}
